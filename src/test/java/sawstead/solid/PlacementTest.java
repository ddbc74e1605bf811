package sawstead.solid;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class PlacementTest {
  /** Definition of a right-handed turn; right angles are exact, so no tolerance. */
  @Test
  void turned_byRightAnglesIsExact() {
    Placement turn = Placement.identity().turned(Axis.Z, 90);
    assertEquals(Axis.Y.unit(), turn.turn(Axis.X.unit()));
    assertEquals(new Vec(-1, 0, 0), turn.turn(Axis.Y.unit()));
    Placement chain = Placement.identity();
    for (int i = 0; i < 1000; i++) {
      chain = chain.turned(Axis.X, 90).turned(Axis.Y, -270).turned(Axis.Z, 450);
    }
    Vec image = chain.apply(new Vec(1, 2, 3));
    double[] sizes = {Math.abs(image.x()), Math.abs(image.y()), Math.abs(image.z())};
    java.util.Arrays.sort(sizes);
    assertArrayEquals(new double[] {1, 2, 3}, sizes);
  }

  @Test
  void turned_isAboutFixedAxesInOrder() {
    Placement to = Placement.identity().turned(Axis.X, 90).turned(Axis.Z, 90).moved(10, 20, 30);
    // (0, 1, 0) goes up by the first turn, stays up in the second.
    assertEquals(new Vec(10, 20, 31), to.apply(Axis.Y.unit()));
    // (1, 0, 0) stays in the first turn, goes to y by the second.
    assertEquals(new Vec(10, 21, 30), to.apply(Axis.X.unit()));
  }

  @Test
  void turned_aboutLineKeepsItsPoints() {
    Vec at = new Vec(3, -4, 5);
    Vec along = new Vec(1, 2, -2);
    Placement turn = Placement.identity().turned(at, along, 73);
    Vec kept = at.plus(along.scale(7));
    assertTrue(kept.distance(turn.apply(kept)) < 1e-13);
    assertEquals(73, angle(turn, along), 1e-12);
  }

  private static double angle(Placement turn, Vec axis) {
    Vec square = axis.cross(Axis.X.unit()).unit();
    Vec image = turn.turn(square);
    return Math.toDegrees(Math.atan2(square.cross(image).dot(axis.unit()), square.dot(image)));
  }

  @Test
  void inverse_undoes() {
    RandomSolids random = new RandomSolids(4);
    for (int i = 0; i < 200; i++) {
      Placement to = random.placement(1000);
      Vec p = random.point(-1000, 1000);
      assertTrue(to.inverse().apply(to.apply(p)).distance(p) < 1e-11, "seed 4, case " + i);
      Vec other = random.point(-1000, 1000);
      double before = p.distance(other);
      assertEquals(before, to.apply(p).distance(to.apply(other)), 1e-11, "seed 4, case " + i);
    }
  }

  @Test
  void of_takesStationDirectionsOfUAndV() {
    Placement to = Placement.of(new Vec(1, 2, 3), Axis.Y.unit(), Axis.Z.unit());
    assertEquals(new Vec(1, 3, 3), to.apply(Axis.X.unit()));
    assertEquals(new Vec(2, 2, 3), to.apply(Axis.Z.unit()));
  }

  @Test
  void of_refusesWhatIsNotSquare() {
    Vec tilted = new Vec(0.1, 1, 0).unit();
    assertThrows(SolidException.class, () -> Placement.of(Vec.ZERO, Axis.X.unit(), tilted));
    assertThrows(
        SolidException.class, () -> Placement.of(Vec.ZERO, new Vec(2, 0, 0), Axis.Y.unit()));
    assertThrows(
        SolidException.class,
        () -> new Placement(Axis.X.unit(), Axis.Y.unit(), new Vec(0, 0, -1), Vec.ZERO));
  }

  @Test
  void columnMajor_listsColumns() {
    double[] expected = {0, 1, 0, 0, -1, 0, 0, 0, 0, 0, 1, 0, 7, 8, 9, 1};
    assertArrayEquals(
        expected, Placement.identity().turned(Axis.Z, 90).moved(7, 8, 9).columnMajor());
  }

  @Test
  void turned_refusesWhatIsNoAngle() {
    Placement at = Placement.identity();
    assertThrows(SolidException.class, () -> at.turned(Axis.X, Double.NaN));
    assertThrows(SolidException.class, () -> at.turned(Vec.ZERO, Vec.ZERO, 10));
  }
}
