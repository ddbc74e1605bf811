package sawstead.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NearestTest {

  private static final List<String> KNOWN =
      List.of("width", "depth", "height", "thickness", "workingHeight", "leftEdge", "legs");

  @ParameterizedTest
  @CsvSource({
    "widht,width",
    "Width,width",
    "deph,depth",
    "thick,thickness",
    "working-height,workingHeight",
    "workinHeigth,workingHeight",
    "left_edge,leftEdge",
    "leg,legs",
    "hight,height"
  })
  void to_findsWhatWasMeant(String word, String meant) {
    assertEquals(Optional.of(meant), Nearest.to(word, KNOWN));
  }

  @Test
  void to_ofSomethingElse_findsNothing() {
    assertEquals(Optional.empty(), Nearest.to("colour", KNOWN));
    assertEquals(Optional.empty(), Nearest.to("", KNOWN));
    assertEquals(Optional.empty(), Nearest.to("x", List.of()));
  }
}
