package sawstead.joinery;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import sawstead.measure.LengthFormat;
import sawstead.measure.Unit;
import sawstead.solid.Axis;
import sawstead.solid.Box;
import sawstead.solid.Vec;

class ScrewJointTest {
  // A top over the upper edge of an upright, 400 mm long.
  private final Board top = Bench.board("t/top", Axis.Z, 0, 0, 500, 600, 400, 518);
  private final Board upright = Bench.board("t/side", Axis.X, 100, 0, 0, 118, 400, 500);
  private final ScrewJoint glued = new ScrewJoint(true);

  @Test
  void join_throughTheFaceIntoTheEdge() {
    Joined joined = glued.join(top, upright, Bench.fixings());
    assertEquals(List.of(), joined.shortfalls());
    assertEquals(top, joined.a());
    assertEquals(upright, joined.b());
    // 50 mm from the ends, at most 200 apart: 300 / 200 -> 3 screws. Common practice, no source.
    assertEquals(
        List.of(50.0, 200.0, 350.0), joined.fasteners().stream().map(f -> f.at().y()).toList());
    Fastener first = joined.fasteners().get(0);
    assertEquals("t/top/screw-1", first.id());
    assertEquals(List.of("t/top", "t/side"), first.joins());
    assertEquals(new Vec(109, 50, 518), first.at());
    assertEquals(new Vec(0, 0, -1), first.axis());
    assertEquals(50, first.length());
    // REF-FAS-11, REF-TRD-06: number 8 in the edge of ply.
    assertEquals(4.17, first.diameter(), 0.005);
    assertEquals(7 / 64.0 * 25.4, first.pilot(), 1e-9);
    assertTrue(first.glued());
    assertEquals("screw", first.joint());
  }

  @Test
  void join_numbersGoOn() {
    Joined once = glued.join(top, upright, Bench.fixings());
    Board other = Bench.board("t/side-2", Axis.X, 300, 0, 0, 318, 400, 500);
    Joined twice = glued.join(top, other, Bench.fixings().and(once.fasteners()));
    assertEquals("t/top/screw-4", twice.fasteners().get(0).id());
  }

  @Test
  void join_leavesItsRowOnALapWhereTheRowIsFullOfHeads() {
    // A strip 72 wide and 110 high on a post, and heads of other screws all along both rows.
    Board strip = Bench.board("t/strip", Axis.X, 0, 0, 0, 18, 72, 110);
    Board post = Bench.board("t/post", Axis.X, 18, 0, 0, 36, 72, 110);
    List<Box> heads =
        List.of(
            new Box(new Vec(0, 12, 0), new Vec(18, 26, 110)),
            new Box(new Vec(0, 46, 0), new Vec(18, 60, 110)));
    Joined joined = glued.join(strip, post, Bench.fixings().keepingClear(heads));
    assertEquals(List.of(), joined.shortfalls());
    List<Vec> at = joined.fasteners().stream().map(Fastener::at).toList();
    assertEquals(2, at.size());
    // REF-FAS-16, bored holes: 2.5 D = 10.4 mm to an edge, 5 D = 20.8 mm apart across the grain.
    assertTrue(at.get(0).distance(at.get(1)) >= 20.8, () -> "at " + at);
    for (Vec point : at) {
      assertTrue(point.y() >= 10.4 && point.y() <= 72 - 10.4, () -> "at " + at);
      assertTrue(point.y() > 26 + 2.08 && point.y() < 46 - 2.08, () -> "at " + at);
    }
  }

  @Test
  void join_whereNothingOfALapIsFree_saysSo() {
    Board strip = Bench.board("t/strip", Axis.X, 0, 0, 0, 18, 72, 110);
    Board post = Bench.board("t/post", Axis.X, 18, 0, 0, 36, 72, 110);
    Box all = new Box(new Vec(0, 0, 0), new Vec(18, 72, 110));
    Joined joined = glued.join(strip, post, Bench.fixings().keepingClear(List.of(all)));
    assertEquals(List.of("only 0 of 2 screws found room: t/strip on t/post"), joined.shortfalls());
  }

  @Test
  void join_withoutAScrewThatSuits_saysSoInTheUnitsOfTheUser() {
    Fixings few =
        Fixings.of(ScrewShelf.of(Bench.screw(10, 50))).writing(LengthFormat.of(Unit.INCH));
    Board a = Bench.board("t/a", Axis.X, 0, 0, 0, 19.05, 72, 110);
    Board b = Bench.board("t/b", Axis.X, 19.05, 0, 0, 31.75, 72, 110);
    assertEquals(
        List.of("no screw at hand goes through 3/4 in and holds in 1/2 in: t/a on t/b"),
        glued.join(a, b, few).shortfalls());
  }

  @Test
  void join_goesBesideAGroove() {
    Board grooved = top.cutBox(new Box(new Vec(0, 190, 509), new Vec(600, 212, 518)), "groove");
    Joined joined = glued.join(grooved, upright, Bench.fixings());
    assertEquals(3, joined.fasteners().size());
    double y = joined.fasteners().get(1).at().y();
    // 3 mm of wood beside the shank: the first whole step that is clear.
    assertTrue(y < 190 - 2.08 - 3 || y > 212 + 2.08 + 3, () -> "at " + y);
    assertTrue(Math.abs(y - 200) < 20, () -> "at " + y);
    for (Fastener f : joined.fasteners()) {
      assertEquals(List.of(), Bench.look(f, joined).crossings());
    }
  }

  @Test
  void join_goesBesideABoreAndAnOpeningOfTheSecondBoard() {
    Board bored = upright.cutBox(new Box(new Vec(100, 30, 470), new Vec(118, 70, 490)), "recess");
    bored = bored.bored(new Vec(0, 350, 485), Axis.X, 35);
    Joined joined = glued.join(top, bored, Bench.fixings());
    assertEquals(3, joined.fasteners().size());
    for (Fastener f : joined.fasteners()) {
      FastenerGeometry look = Bench.look(f, joined);
      assertEquals(List.of(), look.crossings());
      assertEquals(0, look.volumeInTheOpen(), 1e-3);
    }
  }

  @Test
  void join_goesBesideScrewsOfAnotherJoint() {
    // A board that lies against the upright, screwed from the side just under the top.
    Board lower = Bench.board("t/rail", Axis.X, 82, 0, 440, 100, 400, 500);
    List<Fastener> present =
        new ArrayList<>(glued.join(lower, upright, Bench.fixings()).fasteners());
    for (double y = 20; y < 400; y += 60) {
      present.add(
          new Fastener(
              "x/screw-" + y,
              FastenerKind.WOOD_SCREW,
              List.of("x", "t/side"),
              new Vec(82, y, 490),
              new Vec(1, 0, 0),
              32,
              4.17,
              2.8,
              7.9,
              true,
              "screw"));
    }
    Joined joined = glued.join(top, upright, Bench.fixings().and(present));
    assertEquals(3, joined.fasteners().size());
    for (Fastener f : joined.fasteners()) {
      for (Fastener other : present) {
        assertTrue(Bench.look(f, joined).gap(other) > 2.9, () -> f + " " + other);
      }
    }
  }

  @Test
  void join_keepsOutOfForbiddenBoxesAndSaysWhatFoundNoRoom() {
    Box left = new Box(new Vec(90, 0, 480), new Vec(130, 200, 530));
    Fixings fixings = Bench.fixings().keepingClear(List.of(left));
    Joined joined = glued.join(top, upright, fixings);
    assertTrue(joined.fasteners().stream().allMatch(f -> f.at().y() > 200 + 2.08));
    assertEquals(List.of("only 2 of 3 screws found room: t/top on t/side"), joined.shortfalls());
  }

  @Test
  void join_withoutGlueTellsOfLittleThread() {
    Board lap = Bench.board("t/lap", Axis.Z, 0, 0, 482, 600, 90, 500);
    // 18 on 18 mm cannot hold 6 D = 25 mm (REF-FAS-13), so an unglued lap is told about.
    Joined bare = new ScrewJoint(false).join(top, lap, Bench.fixings());
    assertEquals(1, bare.shortfalls().size());
    assertTrue(bare.shortfalls().get(0).contains("diameters"), bare.shortfalls().toString());
    assertEquals(List.of(), glued.join(top, lap, Bench.fixings()).shortfalls());
  }

  @Test
  void join_laysAWideLapInZigzag() {
    Board lap = Bench.board("t/lap", Axis.Z, 0, 0, 482, 600, 90, 500);
    List<Double> y =
        glued.join(top, lap, Bench.fixings()).fasteners().stream().map(f -> f.at().y()).toList();
    assertTrue(y.size() >= 4, y.toString());
    assertTrue(y.get(0) > 45 && y.get(1) < 45, y.toString());
    assertTrue(y.stream().allMatch(at -> at >= 20 && at <= 70), y.toString());
  }

  @Test
  void join_refusesEdgeToEdgeAndBoardsApart() {
    Board beside = Bench.board("t/beside", Axis.Z, 600, 0, 500, 900, 400, 518);
    Board apart = Bench.board("t/apart", Axis.Z, 601, 0, 500, 900, 400, 518);
    assertThrows(JoineryException.class, () -> glued.join(top, beside, Bench.fixings()));
    assertThrows(JoineryException.class, () -> glued.join(top, apart, Bench.fixings()));
  }

  @Test
  void join_withoutASuitableScrewSaysSo() {
    Fixings few = Fixings.of(ScrewShelf.of(Bench.screw(10, 50)));
    Joined joined = glued.join(top, upright, few);
    assertEquals(List.of(), joined.fasteners());
    assertEquals(
        List.of("no screw at hand goes through 18 mm and holds in 500 mm: t/top on t/side"),
        joined.shortfalls());
  }
}
