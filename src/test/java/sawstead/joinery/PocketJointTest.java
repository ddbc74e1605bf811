package sawstead.joinery;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import sawstead.solid.Axis;
import sawstead.solid.Face;
import sawstead.solid.PocketBore;
import sawstead.solid.Vec;

class PocketJointTest {
  // A stretcher of 18 mm, 90 mm high, whose right end butts a cheek; its front face looks to +y.
  private final Board stretcher = Bench.board("s/rail", Axis.Y, 0, 0, 100, 500, 18, 190);
  private final Board cheek = Bench.board("s/cheek", Axis.X, 500, -100, 0, 518, 200, 400);

  /** REF-TRD-05, t = 18: entry 33.588 from the end, exit in the middle, 15 degrees (REF-TRD-04). */
  @Test
  void join_boresFromTheFaceToTheMiddleOfTheEnd() {
    Joined joined = new PocketJoint(Face.FRONT, true).join(stretcher, cheek, Bench.fixings());
    assertEquals(List.of(), joined.shortfalls());
    assertEquals(2, joined.a().features().size());
    for (int i = 0; i < 2; i++) {
      PocketBore bore = (PocketBore) joined.a().features().get(i);
      Vec entry = joined.a().placement().apply(bore.at());
      Vec along = joined.a().placement().turn(bore.direction());
      assertEquals(500 - 33.588, entry.x(), 0.0005);
      assertEquals(18, entry.y(), 1e-9);
      assertEquals(15, Math.toDegrees(Math.asin(-along.y())), 1e-9);
      Vec exit = entry.plus(along.scale(34.7733));
      assertEquals(500, exit.x(), 0.001);
      assertEquals(9, exit.y(), 0.001);
      Fastener screw = joined.fasteners().get(i);
      assertEquals(0, screw.at().distance(entry.plus(along.scale(bore.depth()))), 1e-9);
      assertEquals(0, screw.axis().distance(along), 1e-12);
      assertEquals(31.75, screw.length());
      // Tip: (S - w) cos 15 into the cheek, (S - w) sin 15 to the back of the middle.
      double beyond = 31.75 - (34.7733 - bore.depth());
      assertEquals(500 + beyond * Math.cos(Math.PI / 12), screw.tip().x(), 0.001);
      assertEquals(9 - beyond * Math.sin(Math.PI / 12), screw.tip().y(), 0.001);
      assertEquals(515, screw.tip().x(), 0.001);
    }
    // Two per strip, 20 mm from the ends of a narrow one: common practice, no source.
    assertEquals(120, joined.fasteners().get(0).at().z(), 1e-9);
    assertEquals(170, joined.fasteners().get(1).at().z(), 1e-9);
    assertEquals("s/rail/pocket-1", joined.fasteners().get(0).id());
    assertEquals(List.of("pocket-bore"), joined.a().panel().uncut());
  }

  @Test
  void join_fromTheBackIsTheMirrorImage() {
    Fastener front =
        new PocketJoint(Face.FRONT, true)
            .join(stretcher, cheek, Bench.fixings())
            .fasteners()
            .get(0);
    Fastener back =
        new PocketJoint(Face.BACK, true).join(stretcher, cheek, Bench.fixings()).fasteners().get(0);
    assertEquals(front.at().x(), back.at().x(), 1e-9);
    assertEquals(18 - front.at().y(), back.at().y(), 1e-9);
    assertEquals(-front.axis().y(), back.axis().y(), 1e-12);
  }

  /** The butting board is found whichever way round the two are given. */
  @Test
  void join_givenTheOtherWayRound() {
    Joined one = new PocketJoint(Face.FRONT, true).join(stretcher, cheek, Bench.fixings());
    Joined other = new PocketJoint(Face.FRONT, true).join(cheek, stretcher, Bench.fixings());
    assertEquals(one.a(), other.b());
    assertEquals(one.b(), other.a());
    assertEquals(one.fasteners(), other.fasteners());
  }

  /** REF-TRD-04: 1/2 in stock takes the 1 in screw. */
  @Test
  void join_thinStockTakesTheShortScrew() {
    Board thin = Bench.board("s/thin", Axis.Y, 0, 0, 100, 500, 12, 190);
    Joined joined = new PocketJoint(Face.FRONT, true).join(thin, cheek, Bench.fixings());
    assertEquals(25.4, joined.fasteners().get(0).length());
  }

  @Test
  void join_wideBoardKeepsEndsAndPitch() {
    Board wide = Bench.board("s/wide", Axis.Y, 0, 0, 20, 500, 18, 380);
    Joined joined = new PocketJoint(Face.FRONT, true).join(wide, cheek, Bench.fixings());
    List<Double> z = joined.fasteners().stream().map(f -> f.at().z()).toList();
    // 38 mm from the ends, 150 to 200 mm apart: common practice, no source.
    assertEquals(58, z.get(0), 1e-9);
    assertEquals(342, z.get(z.size() - 1), 1e-9);
    for (int i = 1; i < z.size(); i++) {
      assertTrue(z.get(i) - z.get(i - 1) <= 200, z.toString());
    }
  }

  @Test
  void join_withoutAPocketScrewSaysSo() {
    Fixings none = Fixings.of(ScrewShelf.of(Bench.screw(8, 32)));
    Joined joined = new PocketJoint(Face.FRONT, true).join(stretcher, cheek, none);
    assertEquals(List.of(), joined.fasteners());
    assertEquals(stretcher, joined.a());
    assertEquals(
        List.of("no pocket screw at hand suits 18 mm against 18 mm: s/rail on s/cheek"),
        joined.shortfalls());
  }

  @Test
  void join_intoAnEdgeIsDoneButTold() {
    Board next = Bench.board("s/next", Axis.Y, 500, 0, 100, 700, 18, 190);
    Joined joined = new PocketJoint(Face.FRONT, true).join(stretcher, next, Bench.fixings());
    assertEquals(2, joined.fasteners().size());
    assertEquals(1, joined.shortfalls().size());
    assertTrue(joined.shortfalls().get(0).contains("edge"), joined.shortfalls().toString());
  }

  @Test
  void join_refusesBoardsThatDoNotMeetSo() {
    Board apart = Bench.board("s/apart", Axis.X, 501, -100, 0, 519, 200, 400);
    Board over = Bench.board("s/over", Axis.Y, 0, 18, 100, 500, 36, 190);
    PocketJoint joint = new PocketJoint(Face.FRONT, true);
    assertThrows(JoineryException.class, () -> joint.join(stretcher, apart, Bench.fixings()));
    assertThrows(JoineryException.class, () -> joint.join(stretcher, over, Bench.fixings()));
  }
}
