package sawstead.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import sawstead.solid.Slide;
import sawstead.station.Part;

class SledCheckTest {

  private static Outcome ask(String sled) {
    return SledBriefs.ask(
        new SledCheck(),
        SledBriefs.SAW + SledBriefs.ALIGNED + "sleds:\n  - {id: cross, " + sled + "}\n");
  }

  private static List<String> grave(String sled) {
    return SledBriefs.grave(ask(sled));
  }

  @Test
  void sled_asDesigned_isFine() {
    assertEquals(List.of(), grave("widest: 150"));
  }

  @Test
  void runner_widerOrNarrowerThanItsSlot_isTold() {
    assertEquals(
        List.of("stop runner-tight", "stop runner-tight"),
        grave("widest: 150, runnerWidth: 19.06"));
    assertEquals(
        List.of("mind runner-loose", "mind runner-loose"), grave("widest: 150, runnerWidth: 18.5"));
    assertEquals(
        List.of("mind runner-tight"), grave("widest: 150, runnerWidth: 18.98, runners: left"));
  }

  @Test
  void runner_higherThanItsSlot_bottoms() {
    assertTrue(grave("widest: 150, runnerSheet: ply-12").contains("stop runner-bottoms"));
  }

  @Test
  void guard_thatIsTooShort_isRefused() {
    assertEquals(List.of("stop exit-guard"), grave("widest: 150, guardLength: 30"));
  }

  @Test
  void sled_forWideBoards_tipsOffTheTable() {
    assertEquals(List.of("mind sled-balance"), grave("widest: 500"));
  }

  /** REF-TRD-08: half chord 111.933 at 12 mm above the table; thickest is 79 - 12 - 3. */
  @Test
  void cuts_areThoseOfTheHandbook() {
    Finding note =
        ask("widest: 150").findings().stream()
            .filter(f -> f.rule().equals("sled-cuts"))
            .findFirst()
            .orElseThrow();
    assertTrue(note.says().contains("150 mm wide, 64 mm thick"), note.says());
    assertTrue(note.says().contains("the base is 223.87 mm"), note.says());
  }

  @Test
  void hand_atTheClamp_keepsItsDistance() {
    assertEquals(List.of(), grave("kind: small-parts"));
    assertEquals(List.of(), grave("kind: small-parts, hands: 200"));
    assertEquals(List.of("stop hands-near"), grave("kind: small-parts, hands: 120"));
  }

  /** What a sled says of its squaring is what `square` takes: the distance of its two screws. */
  @Test
  void squaring_namesTheDistanceOfItsTwoScrews() {
    var station = SledBriefs.station(SledBriefs.SAW + SledBriefs.ALIGNED + SledBriefs.SLED);
    var note =
        station.remarks().stream()
            .filter(r -> r.rule().equals("sled-squaring"))
            .findFirst()
            .orElseThrow();
    double[] x =
        note.about().stream()
            .mapToDouble(
                id ->
                    station.fasteners().stream()
                        .filter(f -> f.id().equals(id))
                        .findFirst()
                        .orElseThrow()
                        .at()
                        .x())
            .toArray();
    String apart = sawstead.measure.LengthFormat.millimetres().text(Math.abs(x[0] - x[1]));
    assertTrue(note.remedy().contains("--pivot right --screw '" + apart + " mm'"), note.remedy());
    assertTrue(x[0] > x[1], "the pivot comes first and is on the right");
  }

  /** Without a tail the balance point of any board above 100 mm is off so short a table. */
  @Test
  void sled_ofASmallSaw_hasATailAndCutsAUsefulBoard() {
    String small =
        SledBriefs.SAW
            .replace("depth: 560, height: 330", "depth: 480, height: 330")
            .replace("arbor: 280", "arbor: 235")
            .replace("rear: 500", "rear: 430");
    Report report = Inspector.inspect(SledBriefs.station(small + "sleds:\n  - {id: cross}\n"));
    assertEquals(
        List.of(), report.findings().stream().filter(f -> f.severity() == Severity.STOP).toList());
    assertTrue(report.findings().stream().noneMatch(f -> f.rule().equals("sled-balance")));
    assertTrue(report.station().figures().get("sled-cross-widest").nominal() >= 180);
    double mass = 0;
    double moment = 0;
    for (String id : report.station().mover("cross/stroke").orElseThrow().moves()) {
      Part part = report.station().part(id).orElseThrow();
      mass += part.mass();
      moment += part.mass() * part.body().centroid().y();
    }
    Slide stroke = (Slide) report.station().mover("cross/stroke").orElseThrow().motion();
    assertTrue(moment / mass + stroke.from() > 0, "balance point " + (moment / mass));
  }
}
