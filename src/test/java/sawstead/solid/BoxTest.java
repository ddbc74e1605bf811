package sawstead.solid;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class BoxTest {
  private static final Box UNIT = new Box(Vec.ZERO, new Vec(1, 1, 1));

  @Test
  void new_refusesInsideOut() {
    assertThrows(SolidException.class, () -> new Box(new Vec(1, 0, 0), Vec.ZERO));
  }

  @Test
  void overlaps_withinGap() {
    Box apart = new Box(new Vec(1.5, 0, 0), new Vec(2, 1, 1));
    assertFalse(UNIT.overlaps(apart, 0.49));
    assertTrue(UNIT.overlaps(apart, 0.5));
    assertTrue(apart.overlaps(UNIT, 0.5));
    assertTrue(UNIT.overlaps(new Box(new Vec(1, 1, 1), new Vec(2, 2, 2)), 0));
  }

  /** REF-GEO-17 for boxes: gaps 1, 2, 3. */
  @Test
  void distance_ofCorners() {
    Box far = new Box(new Vec(2, 3, 4), new Vec(3, 4, 5));
    assertEquals(Math.sqrt(14), UNIT.distance(far), 1e-15);
    assertEquals(0, UNIT.distance(UNIT));
  }

  @Test
  void union_holdsBothAndNoMore() {
    Box other = new Box(new Vec(-1, 0.5, 2), new Vec(0, 3, 4));
    assertEquals(new Box(new Vec(-1, 0, 0), new Vec(1, 3, 4)), UNIT.union(other));
  }

  @Test
  void grown_movesEveryFace() {
    Box grown = UNIT.grown(0.25);
    assertEquals(new Vec(1.5, 1.5, 1.5), grown.size());
    assertEquals(UNIT.centre(), grown.centre());
  }

  /** By hand: the diagonal through a corner's neighbour through (1, 0) only touches it. */
  @Test
  void isMetBy_linesThroughAndBeside() {
    Vec slanted = new Vec(1, 1, 0);
    assertTrue(UNIT.isMetBy(new Vec(-5, -5, 0.5), slanted));
    assertTrue(UNIT.isMetBy(new Vec(-5, -6, 1), slanted));
    assertFalse(UNIT.isMetBy(new Vec(-5, -6.001, 1), slanted));
    assertFalse(UNIT.isMetBy(new Vec(-5, -5, 1.001), slanted));
    assertTrue(UNIT.isMetBy(new Vec(0.5, 0.5, 7), new Vec(0, 0, -2)));
    assertFalse(UNIT.isMetBy(new Vec(0.5, 1.5, 7), new Vec(0, 0, -2)));
  }
}
