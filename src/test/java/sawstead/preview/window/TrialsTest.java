package sawstead.preview.window;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

class TrialsTest {
  @Test
  void sorted_putsFirstWhatIsWrittenForTheBodiesAndMovesThem() {
    List<String> written =
        List.of("extras[0].outline[0][0]", "extras[0].place.at[2]", "extras[0].x");
    List<String> tried =
        List.of("station.workingHeight", "extras[0].outline[0][0]", "extras[0].place.at[2]");
    assertEquals(
        List.of(
            "extras[0].place.at[2]",
            "extras[0].outline[0][0]",
            "station.workingHeight",
            "extras[0].x"),
        Trials.sorted(written, tried));
  }
}
