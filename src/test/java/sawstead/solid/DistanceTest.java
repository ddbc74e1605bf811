package sawstead.solid;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class DistanceTest {
  private static final Solid CUBE = Solids.box(1, 1, 1);

  /** The unit cube centred on the origin. */
  private static Body cube() {
    return new Body("cube", CUBE, Placement.at(new Vec(-0.5, -0.5, -0.5)));
  }

  /** REF-GEO-17 and REF-GEO-18 through bodies. */
  @Test
  void between_cubes() {
    Body corner = cube().moved(Placement.at(new Vec(2, 3, 4)));
    Distance far = Distance.between(cube(), corner);
    assertEquals(3.741657387, far.value(), 5e-10);
    assertTrue(far.onA().distance(new Vec(0.5, 0.5, 0.5)) < 1e-6);
    assertTrue(far.onB().distance(new Vec(1.5, 2.5, 3.5)) < 1e-6);
    Body turned = cube().moved(Placement.identity().turned(Axis.Z, 45).moved(2, 0, 0));
    assertEquals(0.792893219, Distance.between(cube(), turned).value(), 1e-8);
  }

  @Test
  void between_touchingAndOverlappingIsNone() {
    assertEquals(0, Distance.between(cube(), cube().moved(Placement.at(new Vec(1, 0, 0)))).value());
    assertEquals(
        0, Distance.between(cube(), cube().moved(Placement.at(new Vec(.3, 0, 0)))).value());
  }

  /**
   * A pin in the middle of a round hole: the gap to the hole's polygon, not to the filled board.
   */
  @Test
  void between_pinAndHole() {
    Panel bored =
        new Panel(Outline.rectangle(0, 0, 600, 300), 18, List.of(Bore.through(100, 100, 64)));
    Body board = new Body("board", bored, Placement.identity());
    Body pin = new Body("pin", Solids.box(10, 10, 50), Placement.at(new Vec(95, 95, -10)));
    double corner = Math.hypot(5, 5);
    double gap = Distance.between(board, pin).value();
    assertTrue(gap <= 32 - corner + 1e-6 && gap >= 32 - corner - Outline.ARC_ERROR, "gap " + gap);
    Body above = new Body("above", Solids.box(10, 10, 50), Placement.at(new Vec(95, 95, 28)));
    double slant = Math.hypot(10, 32 - corner);
    assertEquals(slant, Distance.between(board, above).value(), Outline.ARC_ERROR);
    Body beside = new Body("beside", Solids.box(10, 10, 50), Placement.at(new Vec(300, 95, 28)));
    assertEquals(10, Distance.between(board, beside).value(), 1e-8);
  }

  /** The rival compares every feature of every pair of pieces of the partition. */
  @ParameterizedTest
  @ValueSource(longs = {150, 151})
  void between_agreesWithComparingAllPieces(long seed) {
    RandomSolids random = new RandomSolids(seed);
    for (int i = 0; i < 20; i++) {
      Body a = new Body("a", random.soundPanel(), Placement.at(random.point(-9, 9)));
      Body b = new Body("b", random.soundPanel(), random.placement(700));
      if (a.cover(hole -> true).length * b.cover(hole -> true).length > 2000) {
        continue;
      }
      double rival = Double.POSITIVE_INFINITY;
      double[] onA = new double[3];
      double[] onB = new double[3];
      for (Piece p : a.cover(hole -> true)) {
        for (Piece q : b.cover(hole -> true)) {
          rival = Math.min(rival, FeatureDistance.between(p, q, onA, onB));
        }
      }
      Distance found = Distance.between(a, b);
      String at = "seed " + seed + ", case " + i;
      assertEquals(rival, found.value(), 1e-6, at);
      assertEquals(found.value(), Distance.between(b, a).value(), 1e-6, at);
      if (found.value() > 0) {
        assertTrue(a.contains(found.onA(), 1e-5) && b.contains(found.onB(), 1e-5), at);
      }
    }
  }
}
