package sawstead.joinery;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import sawstead.solid.Box;
import sawstead.solid.Vec;

class FixingsTest {
  @Test
  void nextNumber_goesOnPerPartAndKind() {
    Fixings fixings =
        Bench.fixings()
            .and(List.of(named("a/screw-1"), named("a/screw-12"), named("a/screw-x")))
            .and(List.of(named("ab/screw-40"), named("a/brad-30")));
    assertEquals(13, fixings.nextNumber("a", FastenerKind.WOOD_SCREW));
    assertEquals(31, fixings.nextNumber("a", FastenerKind.BRAD));
    assertEquals(1, fixings.nextNumber("a", FastenerKind.POCKET_SCREW));
  }

  @Test
  void and_leavesTheOldAlone() {
    Fixings before = Bench.fixings();
    Fixings after =
        before.and(List.of(named("a/screw-1"))).keepingClear(List.of(new Box(Vec.ZERO, Vec.ZERO)));
    assertTrue(before.present().isEmpty() && before.keepClear().isEmpty());
    assertEquals(1, after.present().size());
    assertEquals(1, after.keepClear().size());
    assertTrue(after.glue());
    assertEquals(new Brad(32, 1.2), after.withBrads(new Brad(32, 1.2)).brad());
  }

  @Test
  void fastener_refusesSizesThatAreNone() {
    assertThrows(JoineryException.class, () -> sized(0, 4));
    assertThrows(JoineryException.class, () -> sized(30, -1));
    assertThrows(JoineryException.class, () -> sized(Double.NaN, 4));
    assertThrows(JoineryException.class, () -> sized(Double.POSITIVE_INFINITY, 4));
  }

  private static Fastener named(String id) {
    return sized(30, 4).named(id);
  }

  private static Fastener sized(double length, double diameter) {
    return new Fastener(
        "x",
        FastenerKind.WOOD_SCREW,
        List.of("a", "b"),
        Vec.ZERO,
        new Vec(0, 0, 1),
        length,
        diameter,
        2,
        8,
        false,
        "screw");
  }
}
