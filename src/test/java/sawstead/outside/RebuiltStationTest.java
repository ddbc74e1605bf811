package sawstead.outside;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import sawstead.check.Inspector;
import sawstead.check.Report;
import sawstead.export.build.BuildWriter;
import sawstead.export.stl.StlForm;
import sawstead.intake.BriefReader;
import sawstead.station.Briefs;
import sawstead.station.RandomBrief;
import sawstead.station.unit.Units;

/**
 * A station put together again by an independent kernel from the files that {@code build} wrote:
 * every body closed and of the volume that the report states, and of all pairs exactly those in
 * each other that the report calls clashes.
 *
 * <p>STL holds single precision, so a face may be off by half a unit in the last place of its
 * coordinates, 6e-5 mm at 1 m.
 */
class RebuiltStationTest {

  /** Relative: STL's single precision over panels a few mm thin. */
  private static final double VOLUME = 2e-6;

  /** Contact tolerance of a brief that names none, mm. */
  private static final double CONTACT = 0.05;

  @TempDir Path folder;

  static List<Path> demos() {
    return Briefs.demos();
  }

  @ParameterizedTest
  @MethodSource("demos")
  void demo_rebuiltFromItsFiles_isTheOneReported(Path file) throws Exception {
    assertRebuilds(Inspector.inspect(Units.station(BriefReader.read(file))));
  }

  @Test
  void madeUpStation_rebuiltFromItsFiles_isTheOneReported() throws IOException {
    assertRebuilds(Inspector.inspect(Units.station(Briefs.of(RandomBrief.of(4711)))));
  }

  /** Two own panels that cross, one of them turned, and a vac that is too large for its bay. */
  @Test
  void clashes_rebuiltFromItsFiles_areTheOnesReported() throws IOException {
    String text =
        Briefs.SAW
            + """
            vac: {width: 700, depth: 300, height: 300}
            station:
              workingHeight: 900
            extras:
              - id: shelf
                stock: ply
                outline: [[0, 0], [600, 0], [600, 300], [0, 300]]
                cuts:
                  - {groove: {from: [0, 150], to: [600, 150], width: 20, depth: 9, face: front}}
                place: {at: [2000, 0, 500]}
              - id: strut
                stock: ply
                outline: [[0, 0], [600, 0], [600, 80], [0, 80]]
                cuts: [{circle: {at: [300, 40], diameter: 30}}]
                place: {at: [2300, 100, 300], turns: [{about: y, degrees: -50}, {about: z, degrees: 20}]}
            """;
    assertRebuilds(Inspector.inspect(Units.station(Briefs.of(text))));
  }

  private void assertRebuilds(Report report) throws IOException {
    Path built = folder.resolve("built");
    BuildWriter.write(report, built, StlForm.BINARY, draft -> {}, name -> {});
    JsonNode written =
        new ObjectMapper().readTree(Files.readAllBytes(built.resolve("report.json")));
    JsonNode answer = OutsideTool.node("rebuild.mjs", built).json();
    for (JsonNode body : written.get("bodies")) {
      String id = body.get("id").asText();
      JsonNode rebuilt = answer.get("bodies").get(id);
      assertEquals("NoError", rebuilt.get("status").asText(), id);
      double volume = body.get("volume").asDouble();
      assertEquals(volume, rebuilt.get("volume").asDouble(), VOLUME * volume, id);
    }
    Map<String, Double> expected = new TreeMap<>();
    for (JsonNode pair : answer.get("pairs")) {
      if (pair.get("least").asDouble() > CONTACT) {
        expected.put(key(pair), pair.get("volume").asDouble());
      }
    }
    Map<String, Double> found = new TreeMap<>();
    for (JsonNode clash : written.get("clashes")) {
      found.put(key(clash), clash.get("volume").asDouble());
    }
    assertEquals(expected.keySet(), found.keySet());
    expected.forEach((pair, volume) -> assertEquals(volume, found.get(pair), 1e-4 * volume, pair));
  }

  private static String key(JsonNode pair) {
    String a = pair.get("a").asText();
    String b = pair.get("b").asText();
    return a.compareTo(b) < 0 ? a + " x " + b : b + " x " + a;
  }
}
