package sawstead.solid;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Random;
import org.joml.Matrix4d;
import org.joml.Vector3d;
import org.junit.jupiter.api.Test;

/** Chains of turns and moves against JOML, an independent matrix library. */
class PlacementAgainstJomlTest {

  private static final long SEED = 31;

  /**
   * mm. The library takes a cosine as the root of 1 - sin², which near a right angle is good to
   * about 1e-8; four such turns about points a metre or two away stay below this.
   */
  private static final double JUDGE = 1e-6;

  @Test
  void apply_afterTurnsAndMoves_isTheMatrixProduct() {
    Random random = new Random(SEED);
    for (int round = 0; round < 500; round++) {
      Placement placement = Placement.identity();
      Matrix4d matrix = new Matrix4d();
      for (int step = 0; step < 4; step++) {
        Vec at = vec(random, 1000);
        Vec direction = vec(random, 1).unit();
        double degrees = 720 * random.nextDouble() - 360;
        Vec by = vec(random, 500);
        placement = placement.turned(at, direction, degrees).moved(by);
        matrix =
            new Matrix4d()
                .translate(by.x() + at.x(), by.y() + at.y(), by.z() + at.z())
                .rotate(Math.toRadians(degrees), direction.x(), direction.y(), direction.z())
                .translate(-at.x(), -at.y(), -at.z())
                .mul(matrix);
      }
      double[] expected = matrix.get(new double[16]);
      double[] found = placement.columnMajor();
      for (int i = 0; i < 16; i++) {
        assertEquals(expected[i], found[i], JUDGE, "seed 31, round " + round + ", entry " + i);
      }
      Vec point = vec(random, 1000);
      Vector3d there = matrix.transformPosition(new Vector3d(point.x(), point.y(), point.z()));
      Vec ours = placement.apply(point);
      assertEquals(0, ours.distance(new Vec(there.x, there.y, there.z)), JUDGE);
      assertEquals(0, placement.inverse().apply(ours).distance(point), 1e-9);
    }
  }

  private static Vec vec(Random random, double size) {
    return new Vec(
        size * (2 * random.nextDouble() - 1),
        size * (2 * random.nextDouble() - 1),
        size * (2 * random.nextDouble() - 1));
  }
}
