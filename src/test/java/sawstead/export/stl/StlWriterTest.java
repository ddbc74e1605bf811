package sawstead.export.stl;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import sawstead.export.ExportException;
import sawstead.export.RandomPanels;
import sawstead.outside.Admesh;
import sawstead.solid.Axis;
import sawstead.solid.Body;
import sawstead.solid.Mesh;
import sawstead.solid.Outline;
import sawstead.solid.Panel;
import sawstead.solid.Placement;
import sawstead.solid.Solid;
import sawstead.solid.Solids;
import sawstead.solid.Vec;

class StlWriterTest {
  private static final long SEED = 20_260_101;

  @TempDir Path folder;

  /** REF-FIL-01: 84 + 50 n bytes, and the header does not begin with "solid". */
  @Test
  void binary_ofABox_has684Bytes() throws IOException {
    byte[] file = bytes(StlForm.BINARY, "solid/box", Solids.box(10, 20, 30).mesh());
    assertEquals(84 + 50 * 12, file.length);
    String header = new String(file, 0, 80, StandardCharsets.US_ASCII);
    assertFalse(header.startsWith("solid"), header);
    assertTrue(header.contains("solid/box"), header);
  }

  @Test
  void binary_ofNoBodies_hasAHeaderAndNothingElse() throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    StlWriter.of(StlForm.BINARY).writeAssembled("nothing", List.of(), out);
    assertEquals(84, out.size());
  }

  /** REF-FIL-02: unit normals that point outward; REF-GEO-09: volume by divergence. */
  @Test
  void bothForms_ofABox_haveOutwardUnitNormalsAndTheVolume() throws IOException {
    Mesh box = Solids.box(10, 20, 30).mesh();
    List<StlReader.Facet> binary = StlReader.binary(bytes(StlForm.BINARY, "box", box));
    assertEquals(binary, StlReader.text(bytes(StlForm.TEXT, "box", box)));
    assertEquals(6000, StlReader.volume(binary), 1e-9);
    Vec middle = new Vec(5, 10, 15);
    for (StlReader.Facet facet : binary) {
      Vec normal = new Vec(facet.numbers().get(0), facet.numbers().get(1), facet.numbers().get(2));
      double[] a = facet.corner(0);
      assertEquals(1, normal.length(), 1e-7);
      assertTrue(new Vec(a[0], a[1], a[2]).minus(middle).dot(normal) > 0);
    }
  }

  @ParameterizedTest
  @MethodSource("samples")
  void binary_ofARandomPanelTurnedAnyhow_isCleanForAnIndependentReader(RandomPanels.Sample sample)
      throws IOException {
    Mesh mesh = sample.panel().mesh().placed(placement(sample.seed()));
    byte[] file = bytes(StlForm.BINARY, "panel", mesh);
    Admesh found = Admesh.of(Files.write(folder.resolve("panel.stl"), file));
    assertEquals(List.of(), found.defects());
    List<StlReader.Facet> facets = StlReader.binary(file);
    assertEquals(facets.size(), found.facets());
    // Single precision of the reader's own sums, from its own origin.
    assertEquals(sample.panel().volume(), found.volume(), 1e-4 * sample.panel().volume());
    assertEquals(sample.panel().volume(), StlReader.volume(facets), 1e-4 * sample.panel().volume());
    assertBalanced(facets);
    long slivers = facets.stream().filter(StlWriterTest::isSliver).count();
    // In its own frame, as build writes a panel, no normal is in doubt.
    assertTrue(found.normalsFixed() <= (isFlat(sample.seed()) ? 0 : slivers), found.toString());
    facets.forEach(StlWriterTest::assertNormalAgrees);
    assertEquals(facets, StlReader.text(bytes(StlForm.TEXT, "panel", mesh)));
  }

  static List<RandomPanels.Sample> samples() {
    return RandomPanels.from(SEED, 120).toList();
  }

  private static boolean isFlat(long seed) {
    return seed % 3 == 0;
  }

  private static Placement placement(long seed) {
    return isFlat(seed)
        ? Placement.identity()
        : Placement.identity()
            .turned(Axis.X, seed * 7 % 360)
            .turned(Axis.Z, seed * 13 % 360)
            .moved(seed % 100, 900, 500);
  }

  /** Every edge of the file, by its bytes, is run through as often one way as the other. */
  private static void assertBalanced(List<StlReader.Facet> facets) {
    Map<List<Float>, Integer> balance = new HashMap<>();
    for (StlReader.Facet facet : facets) {
      for (int k = 0; k < 3; k++) {
        List<Float> from = facet.numbers().subList(3 + 3 * k, 6 + 3 * k);
        int next = (k + 1) % 3;
        List<Float> to = facet.numbers().subList(3 + 3 * next, 6 + 3 * next);
        assertFalse(from.equals(to), "a facet with two equal corners");
        balance.merge(join(from, to), 1, Integer::sum);
        balance.merge(join(to, from), -1, Integer::sum);
      }
    }
    assertTrue(balance.values().stream().allMatch(n -> n == 0), "an open edge");
  }

  /** Checks the normal in doubles, where the corners as written still tell it. */
  private static void assertNormalAgrees(StlReader.Facet facet) {
    Vec normal = new Vec(facet.numbers().get(0), facet.numbers().get(1), facet.numbers().get(2));
    assertEquals(1, normal.length(), 1e-6);
    if (!isSliver(facet)) {
      assertEquals(1, normal.dot(cross(facet).unit()), 1e-4, facet.toString());
    }
  }

  /**
   * Whether a facet is thinner than a hundred steps of single precision at 2 m, 0.0001 mm each. A
   * reader that recomputes its normal in single precision gets another one.
   */
  private static boolean isSliver(StlReader.Facet facet) {
    Vec a = vec(facet.corner(0));
    Vec b = vec(facet.corner(1));
    Vec c = vec(facet.corner(2));
    double longest =
        Math.max(Math.max(b.minus(a).length(), c.minus(a).length()), c.minus(b).length());
    return cross(facet).length() / longest < 0.01;
  }

  private static Vec cross(StlReader.Facet facet) {
    Vec a = vec(facet.corner(0));
    return vec(facet.corner(1)).minus(a).cross(vec(facet.corner(2)).minus(a));
  }

  private static Vec vec(double[] xyz) {
    return new Vec(xyz[0], xyz[1], xyz[2]);
  }

  private static List<Float> join(List<Float> from, List<Float> to) {
    return List.of(from.get(0), from.get(1), from.get(2), to.get(0), to.get(1), to.get(2));
  }

  /**
   * Far from the origin single precision is coarse: 0.004 mm at 50 m. A step of 0.003 mm then
   * vanishes, its facets go, and what is left is still closed.
   */
  @Test
  void binary_whereRoundingJoinsCorners_leavesOutFlatFacetsAndStaysClosed() throws IOException {
    Panel panel =
        new Panel(Outline.polygon(0, 0, 100, 0, 100, 50, 99.997, 50, 99.997, 60, 0, 60), 18);
    Mesh near = panel.mesh();
    Mesh far = near.placed(Placement.at(new Vec(90_000, 90_000, 90_000)));
    List<StlReader.Facet> facets = StlReader.binary(bytes(StlForm.BINARY, "far", far));
    assertTrue(facets.size() < near.triangleCount(), facets.size() + " facets");
    assertBalanced(facets);
  }

  @Test
  void write_ofACoordinateBeyondSinglePrecision_isRefused() {
    Mesh far = Solids.box(1, 1, 1).mesh().placed(Placement.at(new Vec(1e39, 0, 0)));
    assertThrows(ExportException.class, () -> bytes(StlForm.BINARY, "far", far));
  }

  @Test
  void text_ofAnOddName_keepsToPrintableAscii() throws IOException {
    String name = "stand/R\u00fcck wand\n" + "x".repeat(100);
    String text =
        new String(bytes(StlForm.TEXT, name, Solids.box(1, 1, 1).mesh()), StandardCharsets.UTF_8);
    String first = text.lines().findFirst().orElseThrow();
    assertTrue(first.startsWith("solid stand/R_ck_wand_xxx"), first);
    assertEquals("end" + first, text.lines().reduce((a, b) -> b).orElseThrow());
  }

  @Test
  void binary_ofAnAssembly_holdsEveryBodyAtItsPlace() throws IOException {
    Solid box = Solids.box(10, 10, 10);
    Body left = new Body("left", box, Placement.identity());
    Body right = new Body("right", box, Placement.identity().turned(Axis.Z, 90).moved(40, 0, 0));
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    StlWriter.of(StlForm.BINARY).writeAssembled("both", List.of(left, right), out);
    List<StlReader.Facet> facets = StlReader.binary(out.toByteArray());
    assertEquals(24, facets.size());
    assertEquals(2000, StlReader.volume(facets), 1e-9);
    double greatest =
        facets.stream().mapToDouble(f -> Math.max(f.corner(0)[0], f.corner(1)[0])).max().orElse(0);
    assertEquals(40, greatest, 0);
    Admesh found = Admesh.of(Files.write(folder.resolve("both.stl"), out.toByteArray()));
    assertEquals(List.of(), found.defects());
    assertEquals(2000, found.volume(), 1e-2);
  }

  @Test
  void binary_ofAZero_writesItWithoutASign() throws IOException {
    Mesh box = Solids.box(1, 1, 1).mesh().placed(Placement.identity().turned(Axis.Z, 180));
    for (StlReader.Facet facet : StlReader.binary(bytes(StlForm.BINARY, "box", box))) {
      assertFalse(facet.numbers().contains(-0f), facet.toString());
    }
  }

  private static byte[] bytes(StlForm form, String name, Mesh mesh) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    StlWriter.of(form).write(name, mesh, out);
    return out.toByteArray();
  }
}
