package sawstead.walk;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class StandInTest {
  private static Optional<String> standIn(Answers answers, String path) {
    return Route.of(answers).nodes().stream()
        .filter(n -> n.path().equals(path))
        .findFirst()
        .flatMap(n -> new StandIn(answers).written(n, 1));
  }

  private static Answer said(String path, String text) {
    return new Answer(path, text, text);
  }

  /** Half as wide a table has its blade half as far from its edge: 11 in of 26-1/2 in. */
  @Test
  void measured_scalesWhatStandsIn() {
    Answers usual = new Answers(List.of(said("units", "inch")));
    assertEquals(Optional.of("11 in \u00b1 1 in"), standIn(usual, "saw.blade.leftEdge"));
    Answers half = usual.with(said("saw.table.width", "13-1/4"));
    assertEquals(Optional.of("5-1/2 in \u00b1 1 in"), standIn(half, "saw.blade.leftEdge"));
  }

  @Test
  void secondSlot_liesOnTheOtherSide() {
    Answers two = new Answers(List.of(said("units", "inch"), said("saw.slots", "2")));
    assertEquals(Optional.of("-5-1/2 in \u00b1 1/2 in"), standIn(two, "saw.slots[0].at"));
    assertEquals(Optional.of("5-1/2 in \u00b1 1/2 in"), standIn(two, "saw.slots[1].at"));
  }
}
