package sawstead.solid;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

class MeshTest {
  /** REF-GEO-10: published tetrahedron, its volume recomputed, its centroid as printed. */
  @Test
  void centroid_ofPublishedTetrahedron() {
    double[] points = {
      8.3322, -11.86875, 0.93355, 0.75523, 5, 16.37072, 52.61236, 5, -5.3858, 2, 5, 3
    };
    Mesh mesh = new Mesh(points, new int[] {0, 1, 2, 0, 3, 1, 0, 2, 3, 1, 3, 2});
    double sign = Math.signum(mesh.volume());
    assertEquals(1873.233364, sign * mesh.volume(), 5e-7);
    Vec centroid = mesh.centroid();
    assertEquals(15.92492, centroid.x(), 3e-5);
    assertEquals(0.78281, centroid.y(), 1e-5);
    assertEquals(3.72962, centroid.z(), 1e-5);
    assertTrue(mesh.isClosedAndOriented());
  }

  /** REF-GEO-09: corner tetrahedron. */
  @Test
  void volume_ofCornerTetrahedron() {
    double[] points = {0, 0, 0, 1, 0, 0, 0, 1, 0, 0, 0, 1};
    Mesh mesh = new Mesh(points, new int[] {0, 2, 1, 0, 1, 3, 0, 3, 2, 1, 2, 3});
    assertEquals(1.0 / 6, mesh.volume(), 1e-15);
    assertEquals(0.25, mesh.centroid().x(), 1e-15);
    assertEquals(1.5 + Math.sqrt(3) / 2, mesh.area(), 1e-15);
  }

  /** REF-GEO-08: a cube of 1000 minus half x whole x half of it. */
  @Test
  void volumeAndArea_ofNotchedCube() {
    Panel cube =
        new Panel(
            Outline.rectangle(0, 0, 1000, 1000),
            1000,
            List.of(new Recess("rabbet", Outline.rectangle(500, 0, 1000, 1000), 500, Face.FRONT)));
    assertEquals(0.75e9, cube.volume(), 1e-3);
    assertEquals(5.5e6, cube.mesh().area(), 1e-6);
  }

  /** REF-GEO-08: 4 x 4 x 3 with a void of 1 x 1 x 1, open at the top when cut to height 3. */
  @Test
  void volumeAndArea_ofBlockWithPit() {
    Panel block =
        new Panel(
            Outline.rectangle(0, 0, 4, 4),
            3,
            List.of(new Recess("recess", Outline.rectangle(1, 1, 2, 2), 1, Face.FRONT)));
    assertEquals(47, block.volume(), 1e-9);
    // The published 86 is that of a closed void: 80 + 6. Open, the pit adds its four walls only.
    assertEquals(80 + 4, block.mesh().area(), 1e-9);
  }

  @Test
  void isClosedAndOriented_noticesHolesAndTurnedFaces() {
    double[] points = {0, 0, 0, 1, 0, 0, 0, 1, 0, 0, 0, 1};
    assertFalse(new Mesh(points, new int[] {0, 2, 1, 0, 1, 3, 0, 3, 2}).isClosedAndOriented());
    int[] turned = {0, 1, 2, 0, 1, 3, 0, 3, 2, 1, 2, 3};
    assertFalse(new Mesh(points, turned).isClosedAndOriented());
    int[] flat = {0, 2, 1, 0, 1, 3, 0, 3, 2, 1, 2, 3, 0, 0, 1};
    assertFalse(new Mesh(points, flat).isClosedAndOriented());
  }

  @Test
  void placed_keepsVolumeAndArea() {
    RandomSolids random = new RandomSolids(70);
    for (int i = 0; i < 40; i++) {
      Mesh mesh = random.soundPanel().mesh();
      Mesh moved = mesh.placed(random.placement(2000));
      assertEquals(mesh.volume(), moved.volume(), 1e-10 * mesh.volume(), "seed 70, case " + i);
      assertEquals(mesh.area(), moved.area(), 1e-10 * mesh.area(), "seed 70, case " + i);
    }
  }

  /** No triangle without area, in panels with bevels or without. */
  @Test
  void triangles_haveArea() {
    for (long seed = 300; seed < 500; seed++) {
      Mesh mesh = new RandomSolids(seed).soundPanel().mesh();
      for (int t = 0; t < mesh.triangleCount(); t++) {
        Vec a = mesh.vertex(mesh.corner(t, 0));
        Vec ab = mesh.vertex(mesh.corner(t, 1)).minus(a);
        Vec ac = mesh.vertex(mesh.corner(t, 2)).minus(a);
        assertTrue(ab.cross(ac).length() > 0, "seed " + seed);
      }
    }
  }
}
