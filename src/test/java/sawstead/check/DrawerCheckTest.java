package sawstead.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import sawstead.station.Station;

/** A case of 420 x 450 x 200 in sheets of 12: 396 inside, two slides of 12.7 leave 370.6. */
class DrawerCheckTest {
  private static final double NEAR = 0.05;

  private static String drawer(String more) {
    return SledBriefs.SAW + "drawers:\n  - {id: bits" + more + "}\n";
  }

  private static List<String> grave(String more) {
    return SledBriefs.grave(SledBriefs.ask(new DrawerCheck(), drawer(more)));
  }

  private static String mm(double value) {
    return String.format(Locale.ROOT, "%.4f mm", value);
  }

  @Test
  void drawer_asDesigned_runsOutClear() {
    assertEquals(List.of(), grave(""));
    assertEquals(List.of(), SledBriefs.stops(drawer("")));
    Station station = SledBriefs.station(drawer(""));
    assertEquals(370.6, station.part("bits/floor").orElseThrow().body().box().size().x(), 1e-5);
    // Behind the front of 12, with 10 of air before the rear of 12 of the case of 450.
    assertEquals(
        450 - 12 - 12 - 10,
        station.part("bits/side-1").orElseThrow().body().box().size().y(),
        1e-5);
  }

  @Test
  void case_oneTwentiethNarrower_isTight() {
    String wished = ", width: 370.6 mm, case: {width: ";
    assertEquals(List.of("stop drawer-tight"), grave(wished + mm(420 - NEAR) + "}"));
    assertEquals(List.of(), grave(wished + mm(420 + NEAR) + "}"));
  }

  @Test
  void box_withMoreRoomThanSlidesForgive_isLoose() {
    double loose = 370.6 - 2 * 0.8;
    assertEquals(List.of(), grave(", width: " + mm(loose + NEAR)));
    assertEquals(List.of("mind drawer-loose"), grave(", width: " + mm(loose - NEAR)));
  }

  @Test
  void box_higherThanItsFront_isTold() {
    // The bay is 176 high, the box stands 10 above its floor, the front ends 2 under its top.
    assertEquals(List.of("stop drawer-high"), grave(", height: " + mm(164 + NEAR)));
    assertEquals(List.of(), grave(", height: " + mm(164 - NEAR)));
  }

  @Test
  void travel_ofLessThanThreeQuarters_isShort() {
    double enough = 0.75 * (450 - 34);
    assertEquals(List.of(), grave(", travel: " + mm(enough + NEAR)));
    assertEquals(List.of("mind drawer-short"), grave(", travel: " + mm(enough - NEAR)));
  }

  /** Volumes of rectangular boards less the grip of 90 x 26, by hand. */
  @Test
  void boards_haveTheVolumesOfTheHand() {
    Station station = SledBriefs.station(drawer(""));
    double high = 156 - 12;
    assertEquals(416 * 12 * high, volume(station, "bits/side-1"), 1);
    assertEquals((370.6 - 24) * 12 * high, volume(station, "bits/rear"), 1);
    assertEquals((370.6 - 24) * 12 * high - 90 * 26 * 12, volume(station, "bits/inner-front"), 1);
    assertEquals(392 * 12 * 172.0 - 90 * 26 * 12, volume(station, "bits/front"), 1);
    assertEquals(370.6 * 416 * 12, volume(station, "bits/floor"), 1);
  }

  private static double volume(Station station, String id) {
    return station.part(id).orElseThrow().body().volume();
  }

  @Test
  void contents_comeOutOfTheOpenDrawer_butNotOfOneThatHardlyOpens() {
    String tin = ", contents: [{id: tin, width: 100, depth: 80, height: 50}]";
    Report report = Inspector.inspect(SledBriefs.station(drawer(tin)));
    assertTrue(report.findings().stream().anyMatch(f -> f.rule().equals("contents-after")));
    Passage out =
        report.passages().stream()
            .filter(p -> p.mover().id().startsWith("bits/tin-comes-out"))
            .findFirst()
            .orElseThrow();
    assertTrue(out.firstContact().isEmpty(), out.toString());
    assertEquals(416, out.mover().setting().others().get("bits/opens"), 1e-9);
    Report shut = Inspector.inspect(SledBriefs.station(drawer(tin + ", travel: 60")));
    assertTrue(
        shut.findings().stream().anyMatch(f -> f.rule().matches("contents-(locked|undecided)")),
        shut.findings().toString());
  }

  /** A shelf before the case, nearer than the drawer comes out. */
  @Test
  void drawer_meetsWhatStandsBeforeIt() {
    Station station = SledBriefs.station(drawer(""));
    var front = station.part("bits/front").orElseThrow().body().box();
    for (double sign : new double[] {-1, 1}) {
      // A panel of 12, its face so far before the front; 0.05 deep is still a touch.
      double y = front.low().y() - 416 + 0.05 + sign * NEAR - 12;
      String text =
          drawer("")
              + String.format(
                  Locale.ROOT,
                  "extras: [{id: own/wall, stock: ply-12, outline: [[0,0],[400,0],[400,300],[0,300]],"
                      + " place: {at: [%.4f, %.4f, 0], turns: [{about: x, degrees: 90}]}}]%n",
                  front.low().x(),
                  y + 12);
      assertEquals(sign > 0, SledBriefs.stops(text).contains("motion-blocked"), "sign " + sign);
      assertFalse(SledBriefs.stops(text).contains("clash"), "sign " + sign);
    }
  }
}
