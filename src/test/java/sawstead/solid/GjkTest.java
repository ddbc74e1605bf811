package sawstead.solid;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class GjkTest {
  private static final double EXACT = 2 * Gjk.GAP;

  private static double distance(Piece a, Piece b) {
    return new Gjk().distance(a, b, Double.POSITIVE_INFINITY);
  }

  /** REF-GEO-17. */
  @Test
  void distance_ofCornerAndCorner() {
    Piece a = Pieces.cube();
    assertEquals(Math.sqrt(14), distance(a, Pieces.moved(a, 2, 3, 4)), EXACT);
  }

  /** REF-GEO-18. */
  @Test
  void distance_ofFaceAndEdge() {
    Piece turned = Pieces.moved(Pieces.turned(Pieces.cube(), Axis.Z, 45), 2, 0, 0);
    assertEquals(1.5 - Math.sqrt(0.5), distance(Pieces.cube(), turned), EXACT);
    assertEquals(0.792893219, distance(Pieces.cube(), turned), EXACT);
  }

  /** REF-GEO-19. */
  @Test
  void distance_ofCrossedEdges() {
    Piece a = Pieces.turned(Pieces.cube(), Axis.X, 45);
    Piece b = Pieces.moved(Pieces.turned(Pieces.cube(), Axis.Y, 45), 0, 0, 2);
    assertEquals(2 - Math.sqrt(2), distance(a, b), EXACT);
  }

  /** REF-GEO-20: a cube standing on a corner. */
  @Test
  void distance_ofCornerAndFace() {
    Vec up = new Vec(1, 1, 1).unit();
    Vec across = up.cross(Axis.Z.unit());
    double tilt = Math.toDegrees(Math.acos(up.z()));
    Placement stand = Placement.identity().turned(Vec.ZERO, across, tilt).moved(new Vec(0, 0, 2));
    assertEquals(
        1.5 - Math.sqrt(3) / 2, distance(Pieces.cube(), Pieces.cube().placed(stand)), EXACT);
  }

  /** REF-GEO-21, published polytopes. */
  @Test
  void distance_ofPublishedPolytopes() {
    double[] p = {
      0, 5.5, 0, 2.3, 1, -2, 8.1, 4, 2.4, 4.3, 5, 2.2, 2.5, 1, 2.3, 7.1, 1, 2.4, 1, 1.5, .3, 3.3,
      .5, .3, 6, 1.4, .2
    };
    double[] q = new double[p.length];
    for (int i = 0; i < p.length; i++) {
      q[i] = -p[i];
    }
    assertEquals(3.6536497, distance(Pieces.hull(p), Pieces.hull(q)), 5e-8);
  }

  /** REF-GEO-22: the tip comes nearer and nearer to the slanted face. */
  @ParameterizedTest
  @ValueSource(doubles = {1, 1e-2, 1e-4, 1e-6})
  void distance_ofTipAndSlantedFace(double delta) {
    double[] a = {0, 0, .2, 1, 0, .1, 0, 1, .3, 0, 0, 1};
    double[] b = {0, 0, -3, 1, 0, -3, 0, 1, -3, .5, .3, -delta};
    // The face z = 0.2 - 0.1 x + 0.1 y is below: the distance of a point from its plane.
    double above = .2 - .05 + .03 + delta;
    double expected = above / Math.sqrt(1 + .01 + .01);
    assertEquals(expected, distance(Pieces.hull(a), Pieces.hull(b)), EXACT);
    if (delta == 1) {
      assertEquals(1.168374101, expected, 5e-10);
    }
  }

  /** REF-GEO-22, the flat triangles as prisms. */
  @Test
  void distance_ofTriangles() {
    Piece a = Piece.prism(new double[] {0, 0, 1, 0, 0, 1}, 0, 1);
    Piece b = Piece.prism(new double[] {1, 1, 3, 1, 3, 1.2}, 0, 1);
    assertEquals(Math.sqrt(0.5), distance(a, b), EXACT);
  }

  @Test
  void distance_ofTouchingPiecesIsNone() {
    Piece a = Pieces.box(600, 300, 18);
    assertEquals(0, distance(a, Pieces.moved(a, 600, 0, 0)), 1e-9);
    assertEquals(0, distance(a, Pieces.moved(a, 10, 20, 18)), 1e-9);
    assertEquals(0, distance(a, Pieces.moved(a, 10, 20, 9)), 1e-9);
  }

  /** The rival compares all features; witness points must lie on their pieces. */
  @ParameterizedTest
  @ValueSource(longs = {11, 12, 13})
  void distance_agreesWithComparingAllFeatures(long seed) {
    RandomSolids random = new RandomSolids(seed);
    Gjk gjk = new Gjk();
    double[] onA = new double[3];
    double[] onB = new double[3];
    for (int i = 0; i < 1000; i++) {
      Piece a = random.piece(10);
      Piece b = Pieces.moved(random.piece(10), random.between(0, 20), 0, 0);
      double rival = FeatureDistance.between(a, b, onA, onB);
      double found = gjk.distance(a, b, Double.POSITIVE_INFINITY);
      String at = "seed " + seed + ", case " + i;
      assertEquals(rival, found, 1e-6, at);
      if (found > 0) {
        assertTrue(a.contains(gjk.onFirst(), 1e-6), at);
        assertTrue(b.contains(gjk.onSecond(), 1e-6), at);
        assertEquals(found, gjk.onFirst().distance(gjk.onSecond()), 1e-9, at);
      }
    }
  }

  /** Parallel faces and edges, where simplices degenerate. */
  @Test
  void distance_ofSquareBoxesIsThatOfTheirBounds() {
    RandomSolids random = new RandomSolids(21);
    for (int i = 0; i < 2000; i++) {
      Piece a = Pieces.box(1 + random.below(900), 1 + random.below(900), 18);
      Piece b = Pieces.box(1 + random.below(900), 18, 1 + random.below(900));
      a = a.placed(random.squarePlacement(1000));
      b = b.placed(random.squarePlacement(1000));
      assertEquals(a.box().distance(b.box()), distance(a, b), 1e-6, "seed 21, case " + i);
    }
  }
}
