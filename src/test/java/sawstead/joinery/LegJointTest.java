package sawstead.joinery;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.junit.jupiter.api.Test;
import sawstead.solid.Axis;

class LegJointTest {
  private final Board face = Bench.board("leg-face", Axis.Y, 0, 0, 18, 90, 18, 488);
  private final Board lapped = Bench.board("leg-lapped", Axis.X, 0, 18, 18, 18, 90, 488);

  /** Strips of 90 and 72 mm with 18 mm sheets: common practice, no source. */
  @Test
  void lappedWidth_isNarrowerByTheMeasuredThickness() {
    assertEquals(72, LegJoint.lappedWidth(90, 18));
    assertEquals(72.3, LegJoint.lappedWidth(90, 17.7), 1e-12);
    assertThrows(JoineryException.class, () -> LegJoint.lappedWidth(18, 18));
  }

  @Test
  void join_screwsTheFaceStripToTheEdge() {
    Joined leg = new LegJoint(true).join(face, lapped, Bench.fixings());
    assertEquals(List.of(), leg.shortfalls());
    // 470 long, 50 mm from the ends, at most 200 apart: 3.
    assertEquals(
        List.of(68.0, 253.0, 438.0), leg.fasteners().stream().map(f -> f.at().z()).toList());
    assertEquals("leg-face/screw-1", leg.fasteners().get(0).id());
    FastenerGeometry look = Bench.look(leg.fasteners().get(0), leg);
    assertEquals(18, look.lengthIn(face.body()), 1e-6);
    // REF-FAS-13: at least 6 D.
    assertEquals(32, look.lengthIn(lapped.body()), 1e-6);
    assertEquals(9, look.faceDistance(lapped), 1e-6);
    assertEquals(9, look.edgeDistance(face), 1e-6);
  }

  @Test
  void join_bradsOnRequest() {
    Joined leg = new LegJoint(false).join(face, lapped, Bench.fixings());
    assertEquals(FastenerKind.BRAD, leg.fasteners().get(0).kind());
    assertEquals(1.2, leg.fasteners().get(0).diameter());
    assertEquals(35, leg.fasteners().get(0).length());
    assertEquals(5, leg.fasteners().size());
  }

  @Test
  void join_refusesStripsTheWrongWayRound() {
    assertThrows(
        JoineryException.class, () -> new LegJoint(true).join(lapped, face, Bench.fixings()));
  }
}
