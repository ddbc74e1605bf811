package sawstead.book;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import sawstead.solid.Mesh;
import sawstead.solid.Solids;
import sawstead.solid.Vec;

/** What is seen of a solid, against what descriptive geometry knows of it. */
class PictureTest {
  static Stream<Camera> cameras() {
    return Stream.of(
        Camera.USUAL,
        Camera.seeing(new Vec(0, 0, 1)),
        Camera.seeing(new Vec(1, 0, 0)),
        Camera.seeing(new Vec(-1, 0, 0)),
        Camera.seeing(new Vec(0, 1, 0)),
        Camera.seeing(new Vec(0, -1, 0)));
  }

  /**
   * Gauss's fundamental theorem of axonometry: with the pictures of three equal edges at right
   * angles as complex numbers, the sum of their squares is 0, and the sum of the squares of their
   * lengths is twice the square of an edge (C. F. Gauss, Werke, vol. 2, p. 309; from memory).
   */
  @ParameterizedTest
  @MethodSource("cameras")
  void edgesOfACube_followGauss(Camera camera) {
    double real = 0;
    double imaginary = 0;
    double lengths = 0;
    for (Vec edge : List.of(new Vec(1, 0, 0), new Vec(0, 1, 0), new Vec(0, 0, 1))) {
      Vec seen = camera.seen(edge);
      real += seen.x() * seen.x() - seen.y() * seen.y();
      imaginary += 2 * seen.x() * seen.y();
      lengths += seen.x() * seen.x() + seen.y() * seen.y();
    }
    assertEquals(0, real, 1e-12);
    assertEquals(0, imaginary, 1e-12);
    assertEquals(2, lengths, 1e-12);
  }

  @ParameterizedTest
  @MethodSource("cameras")
  void upIsUp_andNotMirrored(Camera camera) {
    assertTrue(camera.seen(new Vec(0, 0, 1)).y() > 0);
    Vec toward = camera.right().cross(camera.up());
    assertEquals(1, toward.dot(camera.toward()), 1e-12);
  }

  @Test
  void whatComes_isSeenFromItsSide() {
    for (Vec way : List.of(new Vec(1, 0, 0), new Vec(-1, 0, 0), new Vec(0, -1, 0))) {
      double near = Camera.seeing(way).seen(way.scale(-1)).z();
      assertTrue(near > 0, "it stands nearer before it comes along " + way);
    }
  }

  /** Of a convex body with 12 edges, 9 are seen from a corner: three meet at the hidden one. */
  @ParameterizedTest
  @MethodSource("cameras")
  void box_hasNineEdgesThatAreSeen(Camera camera) {
    Mesh mesh = Solids.box(30, 40, 50).mesh();
    assertEquals(9, Creases.of(mesh, camera.toward()).size());
  }

  @Test
  void cylinder_isDrawnByItsRimsAndTwoLines() {
    Vec toward = Camera.USUAL.toward();
    Mesh mesh = Solids.cylinder(60, 100).mesh();
    long along =
        Creases.of(mesh, toward).stream()
            .filter(c -> Math.abs(c.to().minus(c.from()).unit().z()) > 0.99)
            .count();
    assertEquals(2, along);
  }

  @Test
  void nearerTriangle_hidesTheOneBehind_inEitherOrder() {
    double[] near = {0, 0, 10, 40, 0, 10, 0, 40, 10};
    double[] far = {0, 0, 2, 40, 0, 2, 0, 40, 2};
    for (boolean nearFirst : new boolean[] {true, false}) {
      Raster raster = new Raster(50, 50);
      raster.fill(nearFirst ? near : far, nearFirst ? 0x112233 : 0x445566);
      raster.fill(nearFirst ? far : near, nearFirst ? 0x445566 : 0x112233);
      assertEquals(0xff112233, raster.image().getRGB(8, 8));
      assertEquals(0, raster.image().getRGB(45, 45), "nothing is there");
      assertTrue(raster.sees(8, 8, 10, 1));
      assertFalse(raster.sees(8, 8, 2, 1), "it lies behind");
      assertTrue(raster.sees(45, 45, 2, 1), "nothing hides it");
    }
  }

  @Test
  void spots_onOneLine_areTold_together() {
    List<double[]> points =
        List.of(
            new double[] {20, 9},
            new double[] {120, 9.01},
            new double[] {220, 9},
            new double[] {20, 300});
    assertEquals(
        List.of("at 9 up: 20, 120, 220 along", "at 300 up: 20 along"),
        new Spots(points).lines(at -> String.valueOf(Math.round(at))));
  }
}
