package sawstead.joinery;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import sawstead.solid.Axis;
import sawstead.solid.Box;
import sawstead.solid.Vec;

class FastenerGeometryTest {
  private static final double D = new ScrewGauge(8).shank();

  private final Board top = Bench.board("top", Axis.Z, 0, 0, 500, 600, 400, 518);
  private final Board side = Bench.board("side", Axis.X, 100, 0, 0, 118, 400, 500);

  private static Fastener screw(Vec at, Vec axis, double length) {
    return new Fastener(
        "top/screw-1",
        FastenerKind.WOOD_SCREW,
        List.of("top", "side"),
        at,
        axis,
        length,
        D,
        2.8,
        7.9,
        true,
        "screw");
  }

  private static final Vec DOWN = new Vec(0, 0, -1);

  private FastenerGeometry look(double x, double y, double length) {
    return new FastenerGeometry(
        screw(new Vec(x, y, 518), DOWN, length), List.of(top, side), List.of());
  }

  @Test
  void lengths_coverAndDistancesOfAnOrdinaryScrew() {
    FastenerGeometry look = look(109, 150, 50);
    assertEquals(18, look.lengthIn(top.body()), 1e-6);
    assertEquals(32, look.lengthIn(side.body()), 1e-6);
    assertEquals(468, look.tipCover(), 1e-6);
    assertFalse(look.breaksThrough());
    assertEquals(109, look.edgeDistance(top), 1e-6);
    assertEquals(150, look.edgeDistance(side), 1e-6);
    assertEquals(9, look.faceDistance(side), 1e-6);
    assertEquals(Double.POSITIVE_INFINITY, look.faceDistance(top));
    assertEquals(List.of(), look.crossings());
  }

  @Test
  void breaksThrough_atTheFarFace() {
    Board lap = Bench.board("side", Axis.Z, 0, 0, 482, 600, 400, 500);
    for (double length : new double[] {35.9, 36.1}) {
      FastenerGeometry look =
          new FastenerGeometry(
              screw(new Vec(300, 200, 518), DOWN, length), List.of(top, lap), List.of());
      assertEquals(36 - length, look.tipCover(), 1e-6);
      assertEquals(length > 36, look.breaksThrough());
    }
  }

  /** The shank comes out of the side of the edge when its axis is nearer than its radius. */
  @Test
  void breaksThrough_atTheSideOfAnEdge() {
    assertFalse(look(118 - D / 2 - 0.05, 150, 50).breaksThrough());
    assertTrue(look(118 - D / 2 + 0.05, 150, 50).breaksThrough());
  }

  @Test
  void volumeInTheOpen_ofAScrewThatMissesItsMate() {
    FastenerGeometry look = look(300, 150, 50);
    double open = 32 * Math.PI * D * D / 4;
    assertEquals(open, look.volumeInTheOpen(), open * 0.02);
    assertEquals(-32, look.tipCover(), 1e-6);
    assertEquals(0, look.lengthIn(side.body()));
  }

  /** A groove that slides across the screw flips the answer within 0.1 mm, from either side. */
  @ParameterizedTest
  @ValueSource(doubles = {100, 150.3, 222.2222, 350})
  void crossings_flipWithinATenthOfAMillimetre(double y) {
    for (double step : new double[] {-0.05, 0.05}) {
      boolean meets = step > 0;
      Box before =
          new Box(new Vec(0, y - D / 2 - 20 + step, 509), new Vec(600, y - D / 2 + step, 518));
      Box behind =
          new Box(new Vec(0, y + D / 2 - step, 509), new Vec(600, y + D / 2 + 20 - step, 518));
      for (Box air : List.of(before, behind)) {
        Board grooved = top.cutBox(air, "groove");
        FastenerGeometry look =
            new FastenerGeometry(
                screw(new Vec(109, y, 518), DOWN, 50), List.of(grooved, side), List.of());
        assertEquals(meets, !look.crossings().isEmpty(), "groove " + air);
        if (meets) {
          assertEquals("top", look.crossings().get(0).board());
          assertEquals("groove", look.crossings().get(0).feature().operation());
          // The shank is in it by the step, less the error of its polygon, at most 0.02 mm.
          assertEquals(0.05, look.crossings().get(0).depth(), 0.021);
        }
      }
    }
  }

  /** A groove whose floor comes to the tip from the far face. */
  @Test
  void crossings_atTheTip() {
    Board lap = Bench.board("side", Axis.Z, 0, 0, 482, 600, 400, 500);
    for (double floor : new double[] {485.95, 486.05}) {
      Board relieved =
          lap.cutBox(new Box(new Vec(250, 100, 482), new Vec(350, 300, floor)), "relief");
      FastenerGeometry look =
          new FastenerGeometry(
              screw(new Vec(300, 200, 518), DOWN, 32), List.of(top, relieved), List.of());
      assertEquals(floor > 486, !look.crossings().isEmpty());
      assertEquals(486 - floor, look.tipCover(), 1e-6);
    }
  }

  @Test
  void crossings_withABore() {
    for (double step : new double[] {-0.05, 0.05}) {
      Board bored = top.bored(new Vec(109, 150 + D / 2 + 32 - step, 0), Axis.Z, 64);
      FastenerGeometry look =
          new FastenerGeometry(
              screw(new Vec(109, 150, 518), DOWN, 50), List.of(bored, side), List.of());
      assertEquals(step > 0, !look.crossings().isEmpty(), "step " + step);
    }
  }

  /** Its own pocket is no crossing; the pocket of another screw is. */
  @Test
  void crossings_ofAPocketScrew() {
    Board rail = Bench.board("rail", Axis.Y, 0, 0, 100, 500, 18, 190);
    Board cheek = Bench.board("cheek", Axis.X, 500, -100, 0, 518, 200, 400);
    Joined joined =
        new PocketJoint(sawstead.solid.Face.FRONT, true).join(rail, cheek, Bench.fixings());
    Fastener first = joined.fasteners().get(0);
    assertEquals(List.of(), Bench.look(first, joined).crossings());
    Fastener astray =
        new Fastener(
            "x",
            FastenerKind.WOOD_SCREW,
            List.of("rail"),
            first.at().minus(first.axis().scale(5)).plus(new Vec(0, 0, -20)),
            new Vec(0, 0, 1),
            40,
            D,
            0,
            0,
            false,
            "screw");
    assertEquals(1, Bench.look(astray, joined).crossings().size());
  }

  @Test
  void gap_betweenParallelAndCrossingShanks() {
    FastenerGeometry look = look(109, 150, 50);
    assertEquals(20 - D, look.gap(screw(new Vec(109, 170, 518), DOWN, 50)), 0.05);
    Fastener across = screw(new Vec(100, 160, 490), new Vec(1, 0, 0), 18);
    assertEquals(10 - D, look.gap(across), 0.05);
    Fastener through = screw(new Vec(100, 151, 490), new Vec(1, 0, 0), 18);
    assertEquals(0, look.gap(through), 1e-9);
  }

  @Test
  void strays_intoAPartThatItDoesNotJoin() {
    Board other = Bench.board("other", Axis.X, 118, 0, 0, 136, 400, 500);
    assertEquals(List.of(), look(109, 150, 50).strays(List.of(other.body(), side.body())));
    assertEquals(1, look(116.5, 150, 50).strays(List.of(other.body(), side.body())).size());
  }
}
