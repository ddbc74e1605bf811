package sawstead.solid;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class OutlineTest {
  @Test
  void area_ofCircleAndSlotIsClosedFormula() {
    assertEquals(Math.PI * 32 * 32, Outline.circle(100, 50, 64).area(), 1e-9);
    assertEquals(Math.PI * 64, Outline.circle(100, 50, 64).perimeter(), 1e-11);
    Outline slot = Outline.slot(0, 0, 30, 40, 10);
    assertEquals(50 * 10 + Math.PI * 25, slot.area(), 1e-9);
    assertEquals(2 * 50 + Math.PI * 10, slot.perimeter(), 1e-11);
  }

  /** REF-FIL-07: r = c (1 + b^2) / 4 b; a quarter over chord 10 has radius 7.071068. */
  @Test
  void arc_ofQuarterBulge() {
    double quarter = 0.414213562373095;
    Outline pie =
        new Outline(List.of(Corner.of(0, 0), new Corner(5, -5, quarter), Corner.of(5, 5)));
    assertEquals(7.071068, pie.arc(1).radius(), 5e-7);
    assertEquals(Math.PI / 2, pie.arc(1).angle(), 1e-12);
    assertEquals(Math.PI * 50 / 4, pie.area(), 1e-9);
  }

  @Test
  void new_turnsClockwiseRings() {
    Outline given = Outline.polygon(0, 0, 0, 300, 600, 300, 600, 0);
    assertEquals(180_000, given.area());
    assertEquals(Outline.rectangle(0, 0, 600, 300), given);
    List<Corner> clockwise =
        List.of(
            new Corner(0, 0, -1), new Corner(0, 10, 0), new Corner(20, 10, 0), Corner.of(20, 0));
    Outline round = new Outline(clockwise);
    assertEquals(200 + Math.PI * 25 / 2, round.area(), 1e-10);
    assertEquals(-5, round.bounds().low().x(), 1e-12);
  }

  @Test
  void new_mergesTinyEdges() {
    Outline merged = Outline.polygon(0, 0, 600, 0, 600, 0.0005, 600, 300, 0, 300, 0, 0.0003);
    assertEquals(4, merged.corners().size());
  }

  @Test
  void new_refusesWhatIsNoOutline() {
    refuses("at least 3", () -> Outline.polygon(0, 0, 10, 10));
    refuses("at least 3", () -> Outline.polygon(0, 0, 10, 0, 10, 0.0001));
    refuses("touch or cross itself", () -> Outline.polygon(0, 0, 10, 0, 20, 0));
    refuses("enclose an area", () -> Outline.polygon(0, 0, 10, 0, 5, 1e-7));
    refuses("two numbers", () -> Outline.polygon(0, 0, 10, 0, 20));
    refuses("finite", () -> Outline.polygon(0, 0, 10, Double.NaN, 20, 5));
    refuses("100 m", () -> Outline.polygon(0, 0, 100_001, 0, 20, 5));
    refuses("more than 0", () -> Outline.circle(0, 0, 0));
    refuses("more than 0", () -> Outline.circle(0, 0, -3));
    refuses("two different ends", () -> Outline.bar(5, 5, 5, 5, 10));
  }

  @Test
  void new_refusesCrossingsAndSaysWhere() {
    refuses("u = 5.0, v = 5.0", () -> Outline.polygon(0, 0, 10, 10, 10, 0, 0, 10, -3, 5));
    refuses("touch or cross", () -> Outline.polygon(0, 0, 10, 0, 5, 0.0, 5, 10));
    refuses(
        "touch or cross",
        () ->
            new Outline(
                List.of(
                    new Corner(0, 0, 0),
                    new Corner(10, 0, -2),
                    Corner.of(10, 2),
                    Corner.of(0, 2))));
  }

  private static void refuses(String part, org.junit.jupiter.api.function.Executable making) {
    String message = assertThrows(OutlineException.class, making).getMessage();
    assertTrue(message.contains(part), message);
  }

  @Test
  void rounded_takesCornersByClosedFormula() {
    Outline plain = Outline.rectangle(0, 0, 600, 300);
    Outline rounded = plain.rounded(20);
    assertEquals(plain.area() - (4 - Math.PI) * 400, rounded.area(), 1e-8);
    assertEquals(8, rounded.corners().size());
    assertEquals(plain.bounds(), rounded.bounds());
    refuses("does not fit", () -> plain.rounded(151));
    // Two corners of radius 150 leave a half circle.
    assertEquals(300 * 300 + Math.PI * 150 * 150, plain.rounded(150).area(), 1e-7);
  }

  @Test
  void rounded_leavesReflexCorners() {
    Outline angle = Outline.polygon(0, 0, 100, 0, 100, 20, 20, 20, 20, 100, 0, 100);
    assertEquals(angle.area() - 5 * (1 - Math.PI / 4) * 25, angle.rounded(5).area(), 1e-9);
  }

  @Test
  void bounds_reachToTheArcs() {
    Box bounds = Outline.circle(10, 20, 8).bounds();
    assertEquals(new Vec(6, 16, 0), bounds.low());
    assertEquals(14, bounds.high().x(), 1e-14);
    assertEquals(24, bounds.high().y(), 1e-14);
  }

  @ParameterizedTest
  @ValueSource(longs = {31, 32})
  void contains_agreesWithFinePolygon(long seed) {
    RandomSolids random = new RandomSolids(seed);
    for (int i = 0; i < 100; i++) {
      Outline outline = random.outline();
      double[] fine = outline.polygonised(true, 1e-5);
      for (int k = 0; k < 200; k++) {
        double u = random.between(-50, 450);
        double v = random.between(-50, 350);
        assertEquals(
            crossings(fine, u, v) % 2 == 1,
            outline.contains(u, v),
            "seed " + seed + ", case " + i + ", at " + u + " " + v);
      }
    }
  }

  /** A slow and obvious rival: how many edges a ray along u crosses. */
  private static int crossings(double[] uv, double u, double v) {
    int count = 0;
    for (int i = 0; i < uv.length; i += 2) {
      int j = (i + 2) % uv.length;
      if (uv[i + 1] > v != uv[j + 1] > v) {
        double t = (v - uv[i + 1]) / (uv[j + 1] - uv[i + 1]);
        count += uv[i] + t * (uv[j] - uv[i]) > u ? 1 : 0;
      }
    }
    return count;
  }

  @Test
  void contains_itsCornersAndArcs() {
    Outline slot = Outline.slot(0, 0, 30, 40, 10);
    for (Corner c : slot.corners()) {
      assertTrue(slot.contains(c.u(), c.v()));
    }
    assertTrue(slot.contains(-3, -4));
    assertFalse(slot.contains(-3.001, -4.001));
  }

  /** Polygons err on the side of material, by no more than the tolerance. */
  @ParameterizedTest
  @ValueSource(doubles = {0.02, 0.5, 1e-4})
  void polygonised_addsMaterialWithinTolerance(double tolerance) {
    for (double diameter : new double[] {0.5, 3, 64, 500, 20_000}) {
      Outline circle = Outline.circle(7, -9, diameter);
      double[] out = circle.polygonised(true, tolerance);
      double[] in = circle.polygonised(false, tolerance);
      for (int i = 0; i < out.length; i += 2) {
        double off = Math.hypot(out[i] - 7, out[i + 1] + 9) - diameter / 2;
        assertTrue(off >= -1e-9 && off <= tolerance + 1e-9, diameter + " out by " + off);
      }
      for (int i = 0; i < in.length; i += 2) {
        int j = (i + 2) % in.length;
        double corner = Math.hypot(in[i] - 7, in[i + 1] + 9) - diameter / 2;
        double middle =
            Math.hypot((in[i] + in[j]) / 2 - 7, (in[i + 1] + in[j + 1]) / 2 + 9) - diameter / 2;
        assertEquals(0, corner, 1e-9);
        assertTrue(middle <= 1e-9 && middle >= -tolerance - 1e-9, diameter + " in by " + middle);
      }
      assertTrue(new Outline(corners(out)).area() >= circle.area());
      assertTrue(new Outline(corners(in)).area() <= circle.area());
    }
  }

  private static List<Corner> corners(double[] uv) {
    return java.util.stream.IntStream.range(0, uv.length / 2)
        .mapToObj(i -> Corner.of(uv[2 * i], uv[2 * i + 1]))
        .toList();
  }

  @Test
  void isCircle_onlyForFullCircles() {
    assertTrue(Outline.circle(1, 2, 3).isCircle());
    assertFalse(Outline.slot(0, 0, 10, 0, 5).isCircle());
    assertFalse(Outline.rectangle(0, 0, 1, 1).isCircle());
  }

  @Test
  void moved_keepsAreaAndShape() {
    Outline moved = Outline.slot(0, 0, 30, 40, 10).moved(8, 16);
    assertEquals(Outline.slot(8, 16, 38, 56, 10), moved);
  }
}
