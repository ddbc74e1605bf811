package sawstead.preview.window;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import sawstead.preview.bench.Dial;
import sawstead.preview.bench.Written;

class TrialsTest {
  @Test
  void inOrder_whatIsWrittenForItFirst_whatWasMeasuredLast() {
    String text =
        """
        extras:
          - {id: shelf, place: {at: [0, 0, 900]}, outline: [[0, 0]]}
        """;
    List<Dial> dials =
        List.of(
            dial("saw.table.height"),
            dial("vac.height"),
            dial("extras[0].outline[0][0]"),
            dial("extras[0].cuts[0].circle.diameter"),
            dial("cuts[0].circle.diameter"),
            dial("station.workingHeight"),
            dial("extras[0].place.at[2]"));
    assertEquals(
        List.of(
            "extras[0].place.at[2]",
            "station.workingHeight",
            "extras[0].outline[0][0]",
            "extras[0].cuts[0].circle.diameter",
            "cuts[0].circle.diameter",
            "vac.height",
            "saw.table.height"),
        Trials.inOrder(dials, new Written(text, List.of("outfeed/lid", "shelf"))).stream()
            .map(Dial::path)
            .toList());
  }

  private static Dial dial(String path) {
    return new Dial.Words(path, List.of());
  }
}
