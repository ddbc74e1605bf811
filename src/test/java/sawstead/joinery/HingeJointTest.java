package sawstead.joinery;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import sawstead.solid.Axis;
import sawstead.solid.Body;
import sawstead.solid.Box;
import sawstead.solid.Overlap;
import sawstead.solid.Placement;
import sawstead.solid.Vec;

/**
 * All measures of hinges are common practice, no source; angles and distances are by definition.
 */
class HingeJointTest {
  private static final HingeProfile PROFILE = new HingeProfile(5, 16, 1.2, 50);

  // A fixed strip and a lid behind it, tops at 518, 2 mm between them.
  private final Board strip = Bench.board("strip", Axis.Z, 0, 0, 500, 600, 80, 518);
  private final Board lid = Bench.board("lid", Axis.Z, 0, 82, 500, 600, 500, 518);
  private final HingeJoint onTop = HingeJoint.outside("o/hinge", PROFILE, Axis.Z, true);

  @Test
  void outside_knuckleStandsOutByItsRadius() {
    Joined joined = onTop.join(strip, lid, Bench.fixings());
    assertEquals(List.of(), joined.shortfalls());
    Box knuckle = body(joined, "o/hinge/knuckle").box();
    // A polygon around the circle, at most 0.02 mm outside of it.
    assertEquals(520.5, knuckle.high().z(), 0.021);
    assertTrue(knuckle.high().z() >= 520.5 - 1e-6);
    assertEquals(81, knuckle.centre().y(), 0.001);
    assertEquals(600, knuckle.size().x(), 1e-6);
    HingeLine line = joined.axis().orElseThrow();
    assertEquals(81, line.at().y(), 1e-9);
    assertEquals(518, line.at().z(), 1e-9);
  }

  /** A growing angle by the right hand lifts the lid: its far edge goes up. */
  @Test
  void outside_axisOpensTheLid() {
    HingeLine line = onTop.join(strip, lid, Bench.fixings()).axis().orElseThrow();
    Placement opened = Placement.identity().turned(line.at(), line.direction(), 90);
    Vec far = opened.apply(new Vec(300, 500, 518));
    assertEquals(0, far.distance(new Vec(300, 81, 518 + 419)), 1e-9);
  }

  @Test
  void outside_leavesLieFromTheKnuckleToTheirWidth() {
    Joined joined = onTop.join(strip, lid, Bench.fixings());
    Box leaf = body(joined, "o/hinge/leaf-b").box();
    assertEquals(0, leaf.low().distance(new Vec(0, 81 + 2.52, 518)), 1e-6);
    assertEquals(0, leaf.high().distance(new Vec(600, 81 + 16, 519.2)), 1e-6);
    Box other = body(joined, "o/hinge/leaf-a").box();
    assertEquals(0, other.low().distance(new Vec(0, 81 - 16, 518)), 1e-6);
  }

  @Test
  void outside_reliefsAreOpenToTheArris() {
    Joined joined = onTop.join(strip, lid, Bench.fixings());
    assertEquals("relief", joined.a().features().get(0).operation());
    assertEquals("relief", joined.b().features().get(0).operation());
    // 2.5 + 0.02 + 0.5 mm each way from the pin, less half of the gap.
    double taken = 3.02 * (3.02 - 1) * 600;
    assertEquals(600.0 * 80 * 18 - taken, joined.a().panel().volume(), 1);
    assertEquals(600.0 * 418 * 18 - taken, joined.b().panel().volume(), 1);
  }

  @Test
  void outside_aGapAsWideAsTheKnuckleNeedsNoRelief() {
    HingeProfile thin = new HingeProfile(1.9, 10, 0.8, 50);
    Board far = Bench.board("far", Axis.Z, 0, 83, 500, 600, 500, 518);
    Joined joined = HingeJoint.outside("h", thin, Axis.Z, true).join(strip, far, Bench.fixings());
    assertEquals(List.of(), joined.a().features());
    assertEquals(List.of(), joined.b().features());
  }

  @Test
  void screws_standAtThePitchInTheMiddleOfTheLeaf() {
    Joined joined = onTop.join(strip, lid, Bench.fixings());
    List<Fastener> onLid =
        joined.fasteners().stream().filter(f -> f.joins().contains("lid")).toList();
    // 600 - 2 x 15 over 50: 11 pitches.
    assertEquals(12, onLid.size());
    Fastener first = onLid.get(0);
    assertEquals("o/hinge/leaf-b/hinge-screw-1", first.id());
    assertEquals(List.of("o/hinge/leaf-b", "lid"), first.joins());
    assertEquals(50, onLid.get(1).at().x() - first.at().x(), 1e-9);
    assertEquals(519.2, first.at().z(), 1e-9);
    assertEquals(81 + (2.52 + 16) / 2, first.at().y(), 1e-9);
    assertEquals(16, first.length());
    assertEquals(new Vec(0, 0, -1), first.axis());
    assertTrue(first.pilot() > 0);
  }

  @Test
  void screws_keepOutOfARelieved_groove() {
    Board grooved = lid.cutBox(new Box(new Vec(290, 82, 507), new Vec(315, 500, 518)), "groove");
    Joined joined =
        onTop.keepingClear(List.of(new Stretch(290, 315))).join(strip, grooved, Bench.fixings());
    assertEquals(6, joined.bodies().size());
    for (Body body : joined.bodies()) {
      assertTrue(body.box().high().x() <= 290 + 1e-6 || body.box().low().x() >= 315 - 1e-6);
    }
    for (Fastener f : joined.fasteners()) {
      assertEquals(List.of(), Bench.look(f, joined).crossings(), f.id());
    }
  }

  @Test
  void pieces_withoutAnyRoomAreTold() {
    Joined joined =
        onTop.keepingClear(List.of(new Stretch(-10, 610))).join(strip, lid, Bench.fixings());
    assertEquals(List.of(), joined.bodies());
    assertEquals(1, joined.shortfalls().size());
  }

  /** The stop of leaf on leaf by geometry: 1.2 over 2.52 is 25.46 degrees, twice. */
  @Test
  void greatestOpening_isWhereLeafMeetsLeaf() {
    double angle = onTop.greatestOpening();
    assertEquals(180 - 2 * 25.4633, angle, 0.001);
    Joined joined = onTop.join(strip, lid, Bench.fixings());
    assertFalse(leavesMeet(joined, angle - 0.1));
    assertTrue(leavesMeet(joined, angle + 0.1));
  }

  @Test
  void outside_refusesSidesThatAreNotFlush() {
    Board low = Bench.board("low", Axis.Z, 0, 82, 499, 600, 500, 517);
    JoineryException refusal =
        assertThrows(JoineryException.class, () -> onTop.join(strip, low, Bench.fixings()));
    assertTrue(refusal.getMessage().contains("flush"), refusal.getMessage());
    Board far = Bench.board("far", Axis.Z, 0, 84, 500, 600, 500, 518);
    assertThrows(JoineryException.class, () -> onTop.join(strip, far, Bench.fixings()));
    HingeJoint along = HingeJoint.outside("h", PROFILE, Axis.Y, true);
    assertThrows(JoineryException.class, () -> along.join(strip, lid, Bench.fixings()));
  }

  @Test
  void outside_aLeafWiderThanItsEdgeIsTold() {
    Board wall = Bench.board("wall", Axis.Y, 0, 0, 0, 600, 18, 300);
    Board thin = Bench.board("thin", Axis.Z, 0, 0, 300, 600, 400, 312);
    Joined joined =
        HingeJoint.outside("h", PROFILE, Axis.Y, false).join(wall, thin, Bench.fixings());
    assertTrue(
        joined.shortfalls().stream().anyMatch(s -> s.contains("stands over the edge")),
        joined.shortfalls().toString());
  }

  @Test
  void underCorner_foldsDownInFrontOfTheUpright() {
    Board upright = Bench.board("box/rear", Axis.Y, 0, 600, 200, 600, 618, 518);
    Board flap = Bench.board("box/flap", Axis.Z, 0, 618, 500, 600, 900, 518);
    Joined joined = HingeJoint.underCorner("f", PROFILE).join(upright, flap, Bench.fixings());
    assertEquals(List.of(), joined.shortfalls());
    HingeLine line = joined.axis().orElseThrow();
    assertEquals(618 + 2.52, line.at().y(), 1e-9);
    assertEquals(500 - 2.52, line.at().z(), 1e-9);
    Box folded =
        joined.b().body().moved(Placement.identity().turned(line.at(), line.direction(), 90)).box();
    assertEquals(618 + 2 * 2.52, folded.low().y(), 1e-6);
    assertEquals(500, folded.high().z(), 1e-6);
    assertEquals(500 - 282, folded.low().z(), 1e-6);
    // Nothing of the hinge above the flap's underside.
    for (Body body : joined.bodies()) {
      assertTrue(body.box().high().z() <= 500 + 1e-6, body.id());
    }
  }

  @Test
  void underCorner_refusesAnUprightThatEndsTooSoon() {
    Board upright = Bench.board("box/rear", Axis.Y, 0, 600, 490, 600, 618, 518);
    Board flap = Bench.board("box/flap", Axis.Z, 0, 618, 500, 600, 900, 518);
    HingeJoint joint = HingeJoint.underCorner("f", PROFILE);
    assertThrows(JoineryException.class, () -> joint.join(upright, flap, Bench.fixings()));
  }

  private static boolean leavesMeet(Joined joined, double angle) {
    HingeLine line = joined.axis().orElseThrow();
    Body turned =
        body(joined, "o/hinge/leaf-b")
            .moved(Placement.identity().turned(line.at(), line.direction(), angle));
    return Overlap.between(turned, body(joined, "o/hinge/leaf-a")).isPresent();
  }

  private static Body body(Joined joined, String id) {
    return joined.bodies().stream().filter(b -> b.id().equals(id)).findFirst().orElseThrow();
  }
}
