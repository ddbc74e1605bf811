package sawstead.solid;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ClipperTest {
  private static final double ROUNDING = 1e-12;

  /** REF-GEO-01. */
  @Test
  void shared_ofCubeAndCubeTurned45() {
    double shared = Pieces.shared(Pieces.cube(), Pieces.turned(Pieces.cube(), Axis.Z, 45));
    assertEquals(2 * (Math.sqrt(2) - 1), shared, ROUNDING);
    assertEquals(0.828427125, shared, 5e-10);
  }

  /** REF-GEO-02, its decimals. */
  @ParameterizedTest
  @CsvSource({"10, 0.926588295", "20, 0.876534519", "30, 0.845299462", "60, 0.845299462"})
  void shared_ofCubeAndTurnedCube(double degrees, double published) {
    double shared = Pieces.shared(Pieces.cube(), Pieces.turned(Pieces.cube(), Axis.Z, degrees));
    assertEquals(published, shared, 5e-10);
  }

  /** REF-GEO-02, its formula, at every degree. */
  @Test
  void shared_ofCubeAndCubeTurnedByAnyDegree() {
    for (int degrees = 0; degrees <= 90; degrees++) {
      double t = Math.toRadians(degrees);
      double shared = Pieces.shared(Pieces.cube(), Pieces.turned(Pieces.cube(), Axis.Z, degrees));
      assertEquals(2 / (1 + Math.sin(t) + Math.cos(t)), shared, ROUNDING, "at " + degrees);
    }
  }

  /** REF-GEO-03. */
  @Test
  void shared_ofCubeAndCubeTurned60AboutItsDiagonal() {
    Placement turn = Placement.identity().turned(Vec.ZERO, new Vec(1, 1, 1), 60);
    assertEquals(0.75, Pieces.shared(Pieces.cube(), Pieces.cube().placed(turn)), ROUNDING);
  }

  /** REF-GEO-04. */
  @Test
  void shared_ofCubeOfTwoAndOctahedron() {
    assertEquals(4.0 / 3, Pieces.octahedron().volume(), ROUNDING);
    assertEquals(5.0 / 6, Pieces.shared(Pieces.cube(), Pieces.octahedron()), ROUNDING);
  }

  /** REF-GEO-05: |x| + |y| <= 1 and |x| + |z| <= 1, then also |y| + |z| <= 1. */
  @Test
  void shared_ofSquareRodsOnEdge() {
    double side = Math.sqrt(2);
    Piece alongZ = Pieces.turned(Pieces.box(side, side, 4), Axis.Z, 45);
    Piece alongY = Pieces.turned(Pieces.box(side, 4, side), Axis.Y, 45);
    assertEquals(8.0 / 3, Pieces.shared(alongZ, alongY), ROUNDING);
    Piece both = new Clipper().cut(alongZ, planes(alongY));
    Piece alongX = Pieces.turned(Pieces.box(4, side, side), Axis.X, 45);
    assertEquals(2, Pieces.shared(both, alongX), ROUNDING);
  }

  /** REF-GEO-06: round rods, approached from outside as the number of sides grows. */
  @Test
  void shared_ofRoundRods() {
    Piece alongZ = Pieces.rod(512, 4);
    Piece alongX = Pieces.turned(alongZ, Axis.Y, 90);
    Piece alongY = Pieces.turned(alongZ, Axis.X, 90);
    double two = Pieces.shared(alongZ, alongX);
    double three = Pieces.shared(new Clipper().cut(alongZ, planes(alongX)), alongY);
    assertTrue(two > 16.0 / 3 && two < 16.0 / 3 * 1.0001, "two rods share " + two);
    double exact = 8 * (2 - Math.sqrt(2));
    assertTrue(three > exact && three < exact * 1.0001, "three rods share " + three);
  }

  /** REF-GEO-07. */
  @Test
  void shared_ofShiftedBoxes() {
    Piece a = Pieces.box(10, 10, 10);
    assertEquals(210, Pieces.shared(a, Pieces.moved(a, 3, 4, 5)), 1e-10);
  }

  @Test
  void shared_ofTouchingBoxesIsNone() {
    Piece a = Pieces.cube();
    assertEquals(0, Pieces.shared(a, Pieces.moved(a, 1, 0.25, 0)));
    assertEquals(0, Pieces.shared(a, Pieces.moved(a, 1, 1, 1)));
    assertEquals(0, Pieces.shared(a, Pieces.moved(a, 3, 0, 0)));
  }

  @Test
  void shared_ofPieceWithItselfIsItsVolume() {
    Piece piece = Pieces.turned(Pieces.rod(60, 3), Axis.X, 33);
    assertEquals(piece.volume(), Pieces.shared(piece, piece), 1e-11);
  }

  /** A = (A within H) + (A beyond H) for any half-space H. */
  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3})
  void cut_partsAddUp(long seed) {
    RandomSolids random = new RandomSolids(seed);
    for (int i = 0; i < 500; i++) {
      Piece piece = random.piece(10);
      Vec n = random.direction();
      double offset = n.dot(random.point(-12, 12));
      Piece kept = new Clipper().cut(piece, List.of(new Plane(n.x(), n.y(), n.z(), offset)));
      Piece rest = new Clipper().cut(piece, List.of(new Plane(-n.x(), -n.y(), -n.z(), -offset)));
      double sum = (kept == null ? 0 : kept.volume()) + (rest == null ? 0 : rest.volume());
      assertEquals(piece.volume(), sum, 1e-9, "seed " + seed + ", case " + i);
    }
  }

  /** A slow rival: the part of random points of the box that lies in both pieces. */
  @Test
  void shared_agreesWithSampling() {
    RandomSolids random = new RandomSolids(77);
    for (int i = 0; i < 30; i++) {
      Piece a = random.piece(10);
      Piece b = random.piece(10);
      Box box = a.box();
      int in = 0;
      int all = 40_000;
      for (int k = 0; k < all; k++) {
        Vec p =
            new Vec(
                random.between(box.low().x(), box.high().x()),
                random.between(box.low().y(), box.high().y()),
                random.between(box.low().z(), box.high().z()));
        in += a.contains(p, 0) && b.contains(p, 0) ? 1 : 0;
      }
      Vec size = box.size();
      double volume = size.x() * size.y() * size.z();
      double part = (double) in / all;
      double spread = 6 * Math.sqrt(Math.max(part, 1.0 / all) * (1 - part) / all);
      assertEquals(part * volume, Pieces.shared(a, b), spread * volume, "seed 77, case " + i);
    }
  }

  private static List<Plane> planes(Piece piece) {
    List<Plane> planes = new ArrayList<>();
    double[] p = piece.planes;
    for (int f = 0; f < p.length; f += 4) {
      planes.add(new Plane(p[f], p[f + 1], p[f + 2], p[f + 3]));
    }
    return planes;
  }
}
