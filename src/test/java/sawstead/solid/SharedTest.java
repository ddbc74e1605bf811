package sawstead.solid;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class SharedTest {
  private static Body box(String id, double w, double d, double h, Placement at) {
    return new Body(id, Solids.box(w, d, h), at);
  }

  private static double volume(List<Mesh> meshes) {
    return meshes.stream().mapToDouble(Mesh::volume).sum();
  }

  @Test
  void boxes_shareABoxOfTheLengthsThatTheyShare() {
    Body a = box("a", 100, 60, 18, Placement.identity());
    Body b = box("b", 50, 50, 50, Placement.identity().moved(70, 40, 8));
    // 100 - 70, 60 - 40, 18 - 8: the intersection of intervals, worked out by hand.
    assertEquals(30 * 20 * 10, volume(Shared.of(a, b)), 1e-6);
  }

  @Test
  void touching_sharesNothing() {
    Body a = box("a", 100, 60, 18, Placement.identity());
    assertEquals(List.of(), Shared.of(a, box("b", 9, 9, 9, Placement.identity().moved(100, 0, 0))));
  }

  /** Two turned cubes: the pieces are closed, and add up to what the overlap says. */
  @Test
  void pieces_areClosedAndAddUp() {
    for (long seed = 1; seed <= 40; seed++) {
      Random random = new Random(seed);
      Placement at =
          Placement.identity()
              .turned(Axis.X, 90 * random.nextDouble())
              .turned(Axis.Z, 360 * random.nextDouble())
              .moved(40 * random.nextDouble(), 40 * random.nextDouble(), 10);
      Body a = box("a", 80, 70, 60, Placement.identity());
      Body b = box("b", 50, 40, 90, at);
      List<Mesh> shared = Shared.of(a, b);
      String what = "seed " + seed;
      for (Mesh mesh : shared) {
        assertTrue(mesh.isClosedAndOriented(), what);
      }
      double expected = Overlap.between(a, b).map(Overlap::volume).orElse(0.0);
      assertEquals(expected, volume(shared), 1e-6 * (1 + expected), what);
    }
  }
}
