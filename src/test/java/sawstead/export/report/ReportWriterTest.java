package sawstead.export.report;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import sawstead.check.Inspector;
import sawstead.check.Report;
import sawstead.intake.BriefReader;
import sawstead.station.unit.Units;

/** Holds the report of a demo brief against the contract, key by key. */
class ReportWriterTest {
  private static Report report;
  private static byte[] bytes;
  private static JsonNode root;

  @BeforeAll
  static void write() throws Exception {
    report =
        Inspector.inspect(Units.station(BriefReader.read(Path.of("models/lantern-alley.yaml"))));
    bytes = bytes(report);
    root = new ObjectMapper().readTree(bytes);
  }

  private static byte[] bytes(Report report) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ReportWriter.write(report, out);
    return out.toByteArray();
  }

  @Test
  void write_root_hasTheKeysOfTheContract() {
    assertEquals("sawstead-report/1", root.get("format").asText());
    assertEquals("Lantern Alley", root.get("station").asText());
    for (String key :
        List.of("figures", "bodies", "clashes", "motions", "steps", "fasteners", "findings")) {
      assertTrue(root.has(key), key);
    }
  }

  @Test
  void write_sections_haveTheKeysOfTheContract() {
    assertKeys("bodies", "id kind stock thickness length width volume volumeExact mass uncut");
    assertKeys("bodies", "centroid box placement stl");
    assertKeys("clashes", "a b volume depth at");
    assertKeys(
        "motions",
        "id kind moves axis from to rest contacts leastClearance firstContact after set aside others guests");
    assertKeys("steps", "number places fixing direction");
    assertKeys("fasteners", "id kind joins at axis length diameter pilot step reachable");
    assertKeys("findings", "severity rule about at says remedy");
  }

  private static void assertKeys(String section, String keys) {
    for (JsonNode item : root.get(section)) {
      for (String key : keys.split(" ")) {
        assertTrue(item.has(key), section + " has an item without " + key + ": " + item);
      }
    }
  }

  @Test
  void write_figures_haveBandsThatHoldThem() {
    assertTrue(root.get("figures").has("workingHeight"));
    root.get("figures")
        .properties()
        .forEach(
            f -> {
              double nominal = f.getValue().get("nominal").asDouble();
              assertTrue(f.getValue().get("low").asDouble() <= nominal, f.getKey());
              assertTrue(nominal <= f.getValue().get("high").asDouble(), f.getKey());
              double sum = 0;
              for (JsonNode term : f.getValue().get("sum")) {
                sum += term.get("value").asDouble();
              }
              assertEquals(nominal, sum, 1e-9, f.getKey());
            });
  }

  @Test
  void write_everyPart_isABodyOnceAndInOrder() {
    List<String> ids = new ArrayList<>();
    root.get("bodies").forEach(b -> ids.add(b.get("id").asText()));
    assertEquals(new ArrayList<>(new TreeSet<>(ids)), ids);
    assertEquals(report.station().parts().keySet(), Set.copyOf(ids));
  }

  @Test
  void write_arrays_areOrderedById() {
    for (String section : List.of("fasteners", "motions", "gaps")) {
      List<String> ids = new ArrayList<>();
      root.get(section).forEach(i -> ids.add(i.get("id").asText()));
      assertEquals(new ArrayList<>(new TreeSet<>(ids)), ids, section);
    }
  }

  /**
   * {@code placement} takes the local box of a panel without turns by odd angles to {@code box}.
   */
  @Test
  void write_placement_takesThePanelToItsBox() {
    int panels = 0;
    for (JsonNode body : root.get("bodies")) {
      if (body.get("kind").asText().equals("panel")) {
        panels++;
        assertBoxFollows(body);
      }
    }
    assertTrue(panels > 20, "only " + panels + " panels");
  }

  private static void assertBoxFollows(JsonNode body) {
    double[] m = new double[16];
    for (int i = 0; i < 16; i++) {
      m[i] = body.get("placement").get(i).asDouble();
    }
    double[] low = {1e9, 1e9, 1e9};
    double[] high = {-1e9, -1e9, -1e9};
    double[] size = {
      body.get("length").asDouble(), body.get("width").asDouble(), body.get("thickness").asDouble()
    };
    for (int corner = 0; corner < 8; corner++) {
      for (int axis = 0; axis < 3; axis++) {
        double at = m[12 + axis];
        for (int k = 0; k < 3; k++) {
          at += m[4 * k + axis] * ((corner >> k & 1) * size[k]);
        }
        low[axis] = Math.min(low[axis], at);
        high[axis] = Math.max(high[axis], at);
      }
    }
    for (int axis = 0; axis < 3; axis++) {
      // A panel that was extended for a joint begins before its local origin: compare sizes.
      double box =
          body.get("box").get(1).get(axis).asDouble() - body.get("box").get(0).get(axis).asDouble();
      assertEquals(high[axis] - low[axis], box, 1e-6, body.get("id").asText());
    }
  }

  @Test
  void write_text_hasNoNegativeZeroAndNoNoise() {
    String text = new String(bytes, StandardCharsets.UTF_8);
    assertFalse(text.matches("(?s).*[\\[ ]-0[,\\]\\s].*"), "a negative zero");
    assertFalse(text.contains("-0.0,"), "a negative zero");
    assertFalse(text.contains("NaN") || text.contains("Infinity"), "not finite");
    assertFalse(text.matches("(?s).*\\.[0-9]*0000000000[0-9]+.*"), "noise of rounding");
  }

  @Test
  void write_sameReport_givesTheSameBytes() throws Exception {
    assertArrayEquals(bytes, bytes(report));
    Report again =
        Inspector.inspect(Units.station(BriefReader.read(Path.of("models/lantern-alley.yaml"))));
    assertArrayEquals(bytes, bytes(again));
  }

  @Test
  void write_mass_isVolumeTimesDensity() {
    // models/lantern-alley.yaml: density 600 kg/m3.
    for (JsonNode body : root.get("bodies")) {
      if (body.get("kind").asText().equals("panel")) {
        double mass = body.get("volumeExact").asDouble() * 600e-9;
        assertEquals(mass, body.get("mass").asDouble(), 1e-9, body.get("id").asText());
      }
    }
  }
}
