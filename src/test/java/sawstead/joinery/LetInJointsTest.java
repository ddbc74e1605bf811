package sawstead.joinery;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import sawstead.solid.Axis;
import sawstead.solid.Box;
import sawstead.solid.Distance;
import sawstead.solid.Recess;
import sawstead.solid.Vec;

/** {@link DadoJoint} and {@link RabbetJoint}; all rules are common practice, no source. */
class LetInJointsTest {
  // A side 400 x 300 and a shelf whose left end meets it. Shelf measured 17.7 thick.
  private final Board side = Bench.board("c/side", Axis.X, 0, 0, 0, 18, 300, 400);
  private final Board shelf = Bench.board("c/shelf", Axis.Z, 18, 0, 200, 600, 300, 217.7);

  @Test
  void usual_isAThirdDeepAtMostSix() {
    assertEquals(6, DadoJoint.usual(side).depth(), 1e-12);
    assertEquals(4, RabbetJoint.usual(Bench.board("t", Axis.X, 0, 0, 0, 12, 9, 9)).depth(), 1e-12);
    assertEquals(0.1, DadoJoint.usual(side).clearance());
  }

  @Test
  void dado_isAsWideAsItsGuestWasMeasuredAndRunsOut() {
    Joined joined = DadoJoint.usual(side).join(shelf, side, Bench.fixings());
    assertEquals(new Box(new Vec(12, 0, 200), new Vec(600, 300, 217.7)), joined.a().box());
    Recess dado = (Recess) joined.b().features().get(0);
    assertEquals("dado", dado.operation());
    assertEquals(6, dado.depth(), 1e-9);
    Box room = station(joined.b(), dado);
    assertEquals(0, room.low().distance(new Vec(12, 0, 199.95)), 1e-9);
    assertEquals(0, room.high().distance(new Vec(18, 300, 217.75)), 1e-9);
    assertEquals(
        18.0 * 300 * 400 - 6 * 300 * 17.8, joined.b().panel().volume(), 18 * 300 * 400 * 1e-6);
    // The end touches the floor.
    assertEquals(0, Distance.between(joined.a().body(), joined.b().body()).value(), 1e-5);
  }

  @Test
  void dado_stopsBeforeAnEdgeThatTheGuestDoesNotReach() {
    Board narrow = Bench.board("c/narrow", Axis.Z, 18, 50, 200, 600, 300, 217.7);
    Joined joined = DadoJoint.usual(side).join(side, narrow, Bench.fixings());
    Box room = station(joined.a(), (Recess) joined.a().features().get(0));
    assertEquals(49.95, room.low().y(), 1e-9);
    assertEquals(300, room.high().y(), 1e-9);
  }

  @Test
  void rabbet_isOpenToTheEdge() {
    Board top = Bench.board("c/top", Axis.Z, 18, 0, 382.3, 600, 300, 400);
    Joined joined = RabbetJoint.usual(side).join(top, side, Bench.fixings());
    Box room = station(joined.b(), (Recess) joined.b().features().get(0));
    assertEquals(0, room.low().distance(new Vec(12, 0, 382.25)), 1e-9);
    assertEquals(0, room.high().distance(new Vec(18, 300, 400)), 1e-9);
    assertEquals("rabbet", joined.b().features().get(0).operation());
  }

  @Test
  void rabbet_refusesAGuestFarFromTheEdge() {
    assertThrows(
        JoineryException.class, () -> RabbetJoint.usual(side).join(shelf, side, Bench.fixings()));
  }

  @Test
  void bradsGoThroughTheHostIntoTheEnd() {
    Joined joined = new DadoJoint(6, 0.1, true).join(shelf, side, Bench.fixings());
    assertEquals(List.of(), joined.shortfalls());
    // 300 long, 20 mm from the ends, at most 120 apart: 260 / 120 -> 4 brads.
    assertEquals(
        List.of(20.0, 106.7, 193.3, 280.0),
        joined.fasteners().stream().map(f -> Math.round(f.at().y() * 10) / 10.0).toList());
    Fastener brad = joined.fasteners().get(0);
    assertEquals(0, brad.at().distance(new Vec(0, 20, 208.85)), 1e-9);
    assertEquals(new Vec(1, 0, 0), brad.axis());
    assertEquals(List.of("c/side", "c/shelf"), brad.joins());
    FastenerGeometry look = Bench.look(brad, joined);
    assertEquals(12, look.lengthIn(joined.b().body()), 1e-6);
    assertEquals(23, look.lengthIn(joined.a().body()), 1e-6);
    assertEquals(List.of(), look.crossings());
  }

  @Test
  void withoutGlueItIsTold() {
    Joined joined = DadoJoint.usual(side).join(shelf, side, Bench.fixings().withoutGlue());
    assertEquals(1, joined.shortfalls().size());
    assertTrue(joined.shortfalls().get(0).contains("no glue"), joined.shortfalls().toString());
  }

  @Test
  void refusesADepthThatGoesThrough() {
    assertThrows(
        JoineryException.class,
        () -> new DadoJoint(18, 0.1, false).join(shelf, side, Bench.fixings()));
    assertThrows(JoineryException.class, () -> new DadoJoint(0, 0.1, false));
    assertThrows(JoineryException.class, () -> new RabbetJoint(6, -0.1, false));
    assertThrows(JoineryException.class, () -> new RabbetJoint(Double.NaN, 0, false));
  }

  private static Box station(Board board, Recess recess) {
    Box plan = recess.outline().bounds();
    boolean front = recess.face() == sawstead.solid.Face.FRONT;
    double w0 = front ? board.thickness() - recess.depth() : 0;
    double w1 = front ? board.thickness() : recess.depth();
    Vec one = board.placement().apply(plan.low().plus(new Vec(0, 0, w0)));
    Vec other = board.placement().apply(plan.high().plus(new Vec(0, 0, w1)));
    return new Box(one, one).union(new Box(other, other));
  }
}
