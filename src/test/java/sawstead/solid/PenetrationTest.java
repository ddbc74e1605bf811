package sawstead.solid;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PenetrationTest {
  /** REF-GEO-07: least push-out 5 along z. */
  @Test
  void depth_ofShiftedBoxes() {
    Piece a = Pieces.box(10, 10, 10);
    assertEquals(5, Penetration.depth(a, Pieces.moved(a, 3, 4, 5), 0), 1e-12);
  }

  /** Crossed edges, as REF-GEO-19 with the upper cube lowered by 1: sqrt 2 - 1 deep. */
  @Test
  void depth_ofCrossedEdges() {
    Piece a = Pieces.turned(Pieces.cube(), Axis.X, 45);
    Piece b = Pieces.moved(Pieces.turned(Pieces.cube(), Axis.Y, 45), 0, 0, 1);
    assertEquals(Math.sqrt(2) - 1, Penetration.depth(a, b, 0), 1e-12);
  }

  /** The depth is enough to part the pieces in some direction, and no shorter move parts them. */
  @ParameterizedTest
  @ValueSource(longs = {5, 6})
  void depth_isTheLeastTranslationThatParts(long seed) {
    RandomSolids random = new RandomSolids(seed);
    int deep = 0;
    for (int i = 0; i < 400; i++) {
      Piece a = random.piece(10);
      Piece b = random.piece(10);
      double depth = Penetration.depth(a, b, 0);
      String at = "seed " + seed + ", case " + i;
      assertEquals(depth > 0, Pieces.shared(a, b) > 0, at);
      if (depth > 0) {
        deep++;
        assertEquals(depth, Penetration.depth(b, a, 0), 1e-9, at);
        for (int k = 0; k < 100; k++) {
          Vec by = random.direction().scale(depth * 0.999);
          assertTrue(Pieces.shared(a, Pieces.moved(b, by.x(), by.y(), by.z())) > 0, at);
        }
      }
    }
    assertTrue(deep > 50, "only " + deep + " pairs met");
  }

  /** An early end never turns a deeper pair into a shallower one. */
  @Test
  void depth_withFloorIsTheSameAboveIt() {
    RandomSolids random = new RandomSolids(8);
    for (int i = 0; i < 300; i++) {
      Piece a = random.piece(10);
      Piece b = random.piece(10);
      double depth = Penetration.depth(a, b, 0);
      double floor = random.between(0, 3);
      double found = Penetration.depth(a, b, floor);
      assertEquals(depth > floor ? depth : Math.min(found, floor), found, 1e-12, "case " + i);
    }
  }
}
