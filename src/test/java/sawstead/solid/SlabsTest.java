package sawstead.solid;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Properties over thousands of random panels, near-coincident linework included. */
class SlabsTest {
  @ParameterizedTest
  @ValueSource(longs = {0, 1_000, 2_000, 3_000, 4_000})
  void mesh_ofRandomPanelsIsClosedAndHasTheVolume(long first) {
    int refused = 0;
    for (long seed = first; seed < first + 1000; seed++) {
      String at = "seed " + seed;
      Panel panel = new RandomSolids(seed).panel();
      Optional<Mesh> mesh = meshOf(panel);
      if (mesh.isEmpty()) {
        refused++;
        continue;
      }
      assertTrue(mesh.get().isClosedAndOriented(), at);
      double volume = panel.volume();
      double rounding = 1e-9 * Math.max(1, volume);
      assertTrue(volume > 0, at);
      assertEquals(volume, mesh.get().volume(), rounding, at);
      double pieces = panel.partition().stream().mapToDouble(Piece::volume).sum();
      assertEquals(volume, pieces, rounding, at);
      assertTrue(mesh.get().centroid().distance(panel.centroid()) < 1e-6 || volume < 1, at);
    }
    assertTrue(refused < 150, refused + " of 1000 panels had nothing left");
  }

  private static Optional<Mesh> meshOf(Panel panel) {
    try {
      return Optional.of(panel.mesh());
    } catch (SolidException nothingLeft) {
      assertTrue(nothingLeft.getMessage().contains("nothing is left"), nothingLeft.getMessage());
      return Optional.empty();
    }
  }

  /** The slow rival: a point is material if the true outline holds it and no feature does. */
  @ParameterizedTest
  @ValueSource(longs = {40, 41, 42})
  void material_agreesWithAskingEachFeature(long seed) {
    RandomSolids random = new RandomSolids(seed);
    for (int i = 0; i < 60; i++) {
      Outline outline = random.outline();
      List<Feature> features =
          List.of(random.feature(), random.feature(), random.feature(), random.feature());
      Panel panel = new Panel(outline, RandomSolids.THICKNESS, features);
      if (meshOf(panel).isEmpty()) {
        continue;
      }
      for (int k = 0; k < 100; k++) {
        Vec p = new Vec(random.between(-20, 420), random.between(-20, 320), random.between(0, 18));
        // Within the error of arcs and the grid, either answer is right.
        if (isSure(panel, p)) {
          boolean in = panel.partition().stream().anyMatch(piece -> piece.contains(p, 0));
          assertEquals(isMaterial(panel, p), in, "seed " + seed + ", case " + i + ", " + p);
        }
      }
    }
  }

  private static boolean isMaterial(Panel panel, Vec p) {
    for (Prism prism : panel.prisms()) {
      boolean within = p.z() > prism.low() && p.z() < prism.high();
      boolean inside = within && prism.outline().contains(p.x(), p.y());
      if (inside != prism.adds()) {
        if (prism.adds() || inside) {
          return false;
        }
      }
    }
    return true;
  }

  private static boolean isSure(Panel panel, Vec p) {
    boolean here = isMaterial(panel, p);
    double e = 2 * Outline.ARC_ERROR;
    for (int k = 0; k < 8; k++) {
      double u = p.x() + e * Math.cos(k * Math.PI / 4);
      double v = p.y() + e * Math.sin(k * Math.PI / 4);
      for (int s = -1; s <= 1; s++) {
        if (isMaterial(panel, new Vec(u, v, p.z() + s * e)) != here) {
          return false;
        }
      }
    }
    return true;
  }

  /** Both roads lead to the same solid: axis-parallel linework, and the same noded. */
  @Test
  void of_gridAndNoderAgree() {
    RandomSolids random = new RandomSolids(50);
    for (int i = 0; i < 300; i++) {
      List<Prism> prisms = new java.util.ArrayList<>();
      prisms.add(Prism.added(Outline.rectangle(0, 0, 400, 300), 0, 18));
      for (int k = random.below(8); k > 0; k--) {
        double u = 20 * random.below(20);
        double v = 20 * random.below(15);
        Outline cut =
            Outline.rectangle(u, v, u + 10 + 20 * random.below(10), v + 10 + 20 * random.below(10));
        double depth = 3 * (1 + random.below(5));
        prisms.add(
            random.below(2) == 0
                ? Prism.removed(cut, 0, depth)
                : Prism.removed(cut, 18 - depth, 18));
      }
      Storeys storeys = new Storeys(prisms);
      Slabs grid = GridSlabs.of(storeys);
      Slabs noded = NodedSlabs.of(storeys);
      String at = "seed 50, case " + i;
      assertEquals(grid.volume(), noded.volume(), 1e-6, at);
      assertTrue(grid.centroid().distance(noded.centroid()) < 1e-9, at);
      assertTrue(SlabMesh.of(noded).isClosedAndOriented(), at);
      assertEquals(SlabMesh.of(grid).area(), SlabMesh.of(noded).area(), 1e-6, at);
    }
  }

  /** Two rings a fraction of a grid step apart, which point tests would part differently. */
  @Test
  void mesh_ofNearCoincidentRingsIsClosed() {
    for (int i = -8; i <= 8; i++) {
      double off = i * Slabs.GRID / 4;
      Panel panel =
          new Panel(
              Outline.polygon(0, 0, 400, 1, 399, 300, 3, 299),
              18,
              List.of(
                  new Recess(
                      "recess", Outline.polygon(off, 0, 400, 1 + off, 200, 150), 9, Face.FRONT),
                  new Opening(Outline.polygon(off, off, 400, 1, 200, 150 + off))));
      assertTrue(panel.mesh().isClosedAndOriented(), "off by " + off);
    }
  }

  /** Two runs write one file: nothing depends on the order of a hash set. */
  @Test
  void of_isTheSameEveryTime() {
    for (long seed = 600; seed < 640; seed++) {
      Panel panel = new RandomSolids(seed).soundPanel();
      Slabs once = Slabs.of(panel.prisms());
      Slabs again = Slabs.of(panel.prisms());
      assertArrayEquals(once.plan().triangles(), again.plan().triangles(), "seed " + seed);
      assertArrayEquals(once.plan().uv(), again.plan().uv(), "seed " + seed);
      assertArrayEquals(once.arcGain(), again.arcGain(), "seed " + seed);
    }
  }

  @Test
  void snap_hasOneZero() {
    assertEquals(0, Double.compare(0.0, Slabs.snap(-1e-9)));
    assertEquals(Slabs.GRID, Slabs.snap(Slabs.GRID * 1.4));
  }
}
