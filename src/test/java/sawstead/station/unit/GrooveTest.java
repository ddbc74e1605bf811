package sawstead.station.unit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import sawstead.brief.Brief;
import sawstead.solid.Face;
import sawstead.solid.Recess;
import sawstead.station.Briefs;
import sawstead.station.DesignException;
import sawstead.station.Designer;
import sawstead.station.Site;
import sawstead.station.Station;

class GrooveTest {

  private static final String EXACT =
      Briefs.SAW
          .replace(
              "height: 330}",
              "height: 330 ± 0, heights: {frontLeft: 330 ± 0, frontRight: 330 ± 0, rearLeft: 330 ± 0, rearRight: 330 ± 0, centre: 330 ± 0}}")
          .replace("settling: 0", "settling: 0 ± 0")
          .replace(
              "{at: -120, width: 19, depth: 9.5}",
              "{at: -120 ± 0.25, width: 19 ± 0, depth: 9.5 ± 0}");

  /**
   * By hand, with no bands but that of the slot's place: depth = 9.5 slot - 1.5 drop + 1.5
   * clearance = 9.5; width = 19 + 2 × 2.5 + 2 × 0.25 = 24.5; reach = 230 arbor + 117.580 half-chord
   * (REF-TRD-08, 254 mm blade raised 79) + 250 + 25.
   */
  @Test
  void of_slotWithoutBands_isTheSumByHand() {
    Groove groove = grooves(EXACT + "station:\n  outfeed: {drop: 1.5}\n").get(0);
    assertEquals(9.5, groove.depth(), 1e-9);
    assertEquals(24.5, groove.width(), 1e-9);
    assertEquals(-120, groove.x(), 1e-12);
    assertEquals(230 + 117.580 + 250 + 25, groove.reach(), 1e-3);
  }

  @Test
  void of_widerDrop_isThatMuchShallower() {
    double shallow = grooves(EXACT + "station:\n  outfeed: {drop: 3}\n").get(0).depth();
    double deep = grooves(EXACT + "station:\n  outfeed: {drop: 1}\n").get(0).depth();
    assertEquals(2, deep - shallow, 1e-9);
  }

  @Test
  void lidsLowerThanTheSlot_haveNoGroove_andNeedNone() {
    Station station = Units.station(Briefs.of(EXACT + "station:\n  outfeed: {drop: 14}\n"));
    assertTrue(
        station.boards().values().stream()
            .filter(b -> b.id().startsWith("outfeed/lid"))
            .flatMap(b -> b.features().stream())
            .noneMatch(f -> f instanceof Recess r && r.face() == Face.FRONT),
        "9.5 slot - 14 drop + 1.5 clearance is less than nothing");
  }

  @Test
  void of_lowRearCorner_isThatMuchDeeper() {
    String low = EXACT.replace("rearRight: 330 ± 0", "rearRight: 329 ± 0");
    Groove groove = grooves(low + "station:\n  outfeed: {drop: 1.5}\n").get(0);
    assertEquals(9.5, groove.depth(), 1e-9, "outfeed and bar are both lowered by 1 mm");
    String front = EXACT.replace("frontRight: 330 ± 0", "frontRight: 329 ± 0");
    assertEquals(
        8.5,
        grooves(front + "station:\n  outfeed: {drop: 1.5}\n").get(0).depth(),
        1e-9,
        "only the outfeed is lowered");
  }

  @Test
  void cut_leavesARecessInTheLid() {
    Station station = Units.station(Briefs.of(EXACT + "station:\n  outfeed: {drop: 1.5}\n"));
    List<Recess> reliefs =
        station.boards().get("outfeed/lid").features().stream()
            .filter(f -> f.operation().equals("relief") && f instanceof Recess)
            .map(Recess.class::cast)
            .filter(r -> Math.abs(r.depth() - 9.5) < 1e-9)
            .toList();
    assertEquals(1, reliefs.size());
  }

  @Test
  void cut_throughTheLid_isRefused() {
    String deep = EXACT.replace("depth: 9.5 ± 0", "depth: 18 ± 0");
    Brief brief = Briefs.of(deep + "station:\n  outfeed: {drop: 1.5}\n");
    DesignException e = assertThrows(DesignException.class, () -> Units.station(brief));
    assertTrue(e.getMessage().contains("relief groove"), e.getMessage());
  }

  private static List<Groove> grooves(String text) {
    Site site = Designer.survey(Briefs.of(text)).orElseThrow();
    return Groove.of(site, site.wish().outfeed().orElseThrow());
  }
}
