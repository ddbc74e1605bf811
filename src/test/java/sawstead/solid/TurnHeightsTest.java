package sawstead.solid;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class TurnHeightsTest {
  /** The rival turns the points through a thousand angles. */
  @Test
  void highest_agreesWithLookingAtManyAngles() {
    RandomSolids random = new RandomSolids(190);
    for (int i = 0; i < 300; i++) {
      Vec at = random.point(-50, 50);
      Vec axis = random.direction();
      TurnHeights heights = new TurnHeights(at, axis);
      Vec n = random.direction();
      double[] normal = {n.x(), n.y(), n.z()};
      double[] points = random.piece(100).points;
      double from = random.between(-4, 4);
      double width = random.between(0, i % 3 == 0 ? 7 : 1);
      int sign = random.below(2) == 0 ? 1 : -1;
      double found = heights.highest(points, normal, sign, from, from + width);
      double most = Double.NEGATIVE_INFINITY;
      int looks = 1000;
      for (int k = 0; k <= looks; k++) {
        double angle = Math.toDegrees(sign * (from + width * k / looks));
        Placement turn = Placement.identity().turned(at, axis, angle);
        for (int p = 0; p < points.length; p += 3) {
          Vec turned = turn.apply(new Vec(points[p], points[p + 1], points[p + 2]));
          most = Math.max(most, turned.minus(at).dot(n));
        }
      }
      String where = "seed 190, case " + i;
      assertTrue(found >= most - 1e-9, where);
      if (width < Math.PI) {
        double step = width / looks / 2;
        assertEquals(most, found, heights.radius(points) * step * step + 1e-9, where);
      }
    }
  }

  @Test
  void turn_isByTheRightHand() {
    double[] to = new double[3];
    new TurnHeights(Vec.ZERO, Axis.Z.unit()).turn(new double[] {1, 0, 0}, Math.PI / 2, to);
    assertEquals(0, to[0], 1e-15);
    assertEquals(1, to[1], 1e-15);
  }
}
