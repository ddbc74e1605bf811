package sawstead.station.unit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import sawstead.brief.Brief;
import sawstead.intake.BriefException;
import sawstead.intake.BriefReader;
import sawstead.solid.Box;
import sawstead.solid.Overlap;
import sawstead.station.Briefs;
import sawstead.station.Part;
import sawstead.station.RandomBrief;
import sawstead.station.Remark;
import sawstead.station.Site;
import sawstead.station.Station;

class UnitsTest {

  /** What our own units may overlap by, mm: rounding, never the contact tolerance. */
  private static final double ROUNDING = 0.001;

  static List<java.nio.file.Path> demos() {
    return Briefs.demos();
  }

  @ParameterizedTest
  @MethodSource("demos")
  void station_ofDemo_hasNoOverlapAndNoStop(java.nio.file.Path file) throws Exception {
    Station station = Units.station(BriefReader.read(file));
    assertEquals(List.of(), overlaps(station));
    assertEquals(List.of(), stops(station));
  }

  /** Made-up saws and wishes: whatever a person orders, the pieces never lie in each other. */
  @ParameterizedTest
  @ValueSource(longs = {100, 200, 300, 400, 500, 600})
  void station_ofMadeUpBrief_hasNoOverlapAndNoStop(long first) {
    for (long seed = first; seed < first + 6; seed++) {
      Station station = Units.station(Briefs.of(RandomBrief.of(seed)));
      assertEquals(List.of(), overlaps(station), "seed " + seed);
      assertEquals(List.of(), stops(station), "seed " + seed);
      assertNothingAboveTheTable(station, seed);
    }
  }

  @Test
  void station_ofMillimetresAndInches_isTheSame() {
    String mm =
        Briefs.SAW
            + "vac: {width: 304.8, depth: 304.8, height: 381}\ncasters: {height: 76.2}\nstation: {workingHeight: 939.8}\n";
    String inch =
        """
        name: test
        units: inch
        saw:
          table: {width: 640 mm, depth: 480 mm, height: 330 mm}
          body: {left: 260 mm, right: 300 mm, front: 30 mm, rear: 440 mm}
          feet: {left: 250 mm, right: 290 mm, front: 40 mm, rear: 430 mm, settling: 0}
          bottom: closed
          blade: {leftEdge: 300 mm, arbor: 230 mm}
          slots: [{at: -120 mm, width: 19 mm, depth: 9.5 mm}]
          fence: {kind: one-end, right: 320 mm}
        stock:
          - {name: ply, length: 2440 mm, width: 1220 mm, thickness: 18 mm}
        vac: {width: 12, depth: 1', height: 1' 3"}
        casters: {height: 3}
        station: {workingHeight: 3' 1}
        """;
    Map<String, Box> one = boxes(Units.station(Briefs.of(mm)));
    Map<String, Box> other = boxes(Units.station(Briefs.of(inch)));
    assertEquals(one.keySet(), other.keySet());
    one.forEach(
        (id, box) -> {
          assertEquals(0, box.low().distance(other.get(id).low()), 1e-9, id);
          assertEquals(0, box.high().distance(other.get(id).high()), 1e-9, id);
        });
  }

  @Test
  void station_twice_isTheSame() {
    String text = RandomBrief.of(77);
    Station one = Units.station(Briefs.of(text));
    Station other = Units.station(Briefs.of(text));
    assertEquals(boxes(one), boxes(other));
    assertEquals(one.fasteners(), other.fasteners());
  }

  @ParameterizedTest
  @ValueSource(strings = {"first-brief", "lantern-alley", "quay-shed"})
  void wing_isCarriedByFourScrewsIntoTheStand(String model) throws BriefException {
    Station station = Units.station(BriefReader.read(Path.of("models", model + ".yaml")));
    for (String wing : List.of("wing-left/inner", "wing-right/inner")) {
      if (station.part(wing).isPresent()) {
        long carry =
            station.fasteners().stream()
                .filter(f -> f.joins().get(0).equals(wing) && f.joins().get(1).startsWith("stand/"))
                .count();
        assertTrue(carry >= 4, () -> model + ": " + wing + " hangs by " + carry);
      }
    }
    assertTrue(
        station.remarks().stream().noneMatch(r -> r.rule().equals("joint-short")),
        () -> model + ": " + station.remarks());
  }

  @Test
  void station_withoutASaw_isItsOwnPanelsOnly() {
    Brief brief =
        Briefs.of(
            """
            name: jig
            units: mm
            stock: [{name: ply, length: 2440, width: 1220, thickness: 18}]
            extras:
              - id: jig
                stock: ply
                outline: [[0, 0], [600, 0], [600, 300], [0, 300]]
                place: {at: [0, 900, 500], turns: [{about: x, degrees: 90}, {about: z, degrees: 30}]}
            """);
    Station station = Units.station(brief);
    assertEquals(List.of("jig"), List.copyOf(station.parts().keySet()));
    assertEquals(600 * 300 * 18, station.parts().get("jig").body().volume(), 1e-6);
  }

  private static void assertNothingAboveTheTable(Station station, long seed) {
    Site site = station.site().orElseThrow();
    for (Part part : station.parts().values()) {
      if (part.unit().startsWith("wing") || part.unit().equals("outfeed")) {
        assertTrue(
            part.body().box().high().z() <= site.levels().lowestTable() + 1e-9,
            "seed " + seed + ": " + part.id() + " stands above the table");
      }
    }
  }

  private static Map<String, Box> boxes(Station station) {
    Map<String, Box> boxes = new TreeMap<>();
    station.parts().forEach((id, part) -> boxes.put(id, part.body().box()));
    return boxes;
  }

  private static List<String> stops(Station station) {
    return station.remarks().stream()
        .filter(r -> r.grave() == Remark.Weight.STOP)
        .map(Remark::says)
        .toList();
  }

  private static List<String> overlaps(Station station) {
    List<Part> parts = new ArrayList<>(station.parts().values());
    List<String> found = new ArrayList<>();
    for (int i = 0; i < parts.size(); i++) {
      for (int j = i + 1; j < parts.size(); j++) {
        if (parts.get(i).body().box().overlaps(parts.get(j).body().box(), 0)) {
          Optional<Overlap> overlap = Overlap.between(parts.get(i).body(), parts.get(j).body());
          if (overlap.isPresent() && overlap.get().depth() > ROUNDING) {
            found.add(parts.get(i).id() + " and " + parts.get(j).id() + ": " + overlap.get());
          }
        }
      }
    }
    return found;
  }
}
