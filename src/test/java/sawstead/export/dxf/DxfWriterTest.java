package sawstead.export.dxf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sawstead.drawing.dxf.DxfUnit;
import sawstead.drawing.dxf.DxfVersion;
import sawstead.export.RandomPanels;
import sawstead.outside.OutsideTool;
import sawstead.solid.Bore;
import sawstead.solid.Face;
import sawstead.solid.Feature;
import sawstead.solid.Opening;
import sawstead.solid.Outline;
import sawstead.solid.Panel;
import sawstead.solid.Recess;

/** Two independent readers find in the file what is in the panel. */
class DxfWriterTest {
  private static final long SEED = 20_260_202;
  private static final int COUNT = 60;

  @TempDir Path folder;

  /** REF-FIL-03 the version, REF-FIL-04 the unit; R12 has no variable for it. */
  @ParameterizedTest
  @CsvSource({
    "R2000, MM, AC1015, 4, 1",
    "R2000, INCH, AC1015, 1, 0",
    "R2013, MM, AC1027, 4, 1",
    "R12, MM, AC1009, ,",
    "R12, INCH, AC1009, ,"
  })
  void write_ofRandomPanels_isCleanAndCompleteForAnIndependentReader(
      DxfVersion version, DxfUnit unit, String code, Integer units, Integer measurement)
      throws IOException {
    List<RandomPanels.Sample> samples = RandomPanels.from(SEED, COUNT).toList();
    JsonNode answer = OutsideTool.python("read_dxf.py", files(samples, version, unit)).json();
    for (int i = 0; i < COUNT; i++) {
      JsonNode file = answer.get(i);
      String seed = "seed " + samples.get(i).seed();
      assertEquals(code, file.get("version").asText(), seed);
      assertEquals(0, file.get("faults").size(), seed + file.get("faults"));
      assertEquals(0, file.get("repairs").size(), seed + file.get("repairs"));
      if (units != null) {
        assertEquals(units, file.get("units").asInt(), seed);
        assertEquals(measurement, file.get("measurement").asInt(), seed);
      }
      Expected expected = Expected.of(samples.get(i).panel(), version, unit);
      assertEquals(expected.layers(), names(file.get("layers")), seed);
      file.get("layers")
          .properties()
          .forEach(
              layer -> {
                String where = seed + " layer " + layer.getKey();
                assertEquals(0, layer.getValue().get("open").size(), where);
                assertClose(expected.areas(layer.getKey()), layer.getValue().get("areas"), where);
                assertClose(expected.radii(layer.getKey()), layer.getValue().get("radii"), where);
              });
    }
  }

  @Test
  void write_ofRandomPanels_isTheSameForASecondReader() throws IOException {
    for (DxfVersion version : List.of(DxfVersion.R2000, DxfVersion.R12)) {
      List<RandomPanels.Sample> samples = RandomPanels.from(SEED, COUNT).toList();
      JsonNode answer =
          OutsideTool.node("read_dxf.mjs", files(samples, version, DxfUnit.MM)).json();
      for (int i = 0; i < COUNT; i++) {
        String seed = "seed " + samples.get(i).seed();
        Expected expected = Expected.of(samples.get(i).panel(), version, DxfUnit.MM);
        Map<String, List<Double>> areas = new TreeMap<>();
        Map<String, List<Double>> radii = new TreeMap<>();
        for (JsonNode entity : answer.get(i).get("entities")) {
          String layer = entity.get("layer").asText();
          if (entity.get("type").asText().endsWith("POLYLINE")) {
            areas.computeIfAbsent(layer, l -> new ArrayList<>()).add(entity.get("area").asDouble());
          } else if (entity.get("type").asText().equals("CIRCLE")) {
            radii
                .computeIfAbsent(layer, l -> new ArrayList<>())
                .add(entity.get("radius").asDouble());
          }
        }
        Set<String> layers = new TreeSet<>();
        answer.get(i).get("layers").forEach(layer -> layers.add(layer.asText()));
        assertEquals(expected.layers(), layers, seed);
        for (String layer : expected.layers()) {
          assertClose(expected.areas(layer), areas.getOrDefault(layer, List.of()), seed + layer);
          assertClose(expected.radii(layer), radii.getOrDefault(layer, List.of()), seed + layer);
        }
      }
    }
  }

  /** Every corner of the format by hand: one panel whose areas and radii are plain to see. */
  @Test
  void write_ofAPlainPanel_hasTheAreasOneCanWorkOut() throws IOException {
    Panel panel =
        new Panel(
            Outline.rectangle(0, 0, 600, 300),
            18,
            List.of(
                new Opening(Outline.slot(100, 150, 200, 150, 20)),
                new Recess("groove", Outline.bar(0, 40, 600, 40, 19.05), 9.525, Face.FRONT),
                new Recess("dado", Outline.rectangle(400, 0, 418, 300), 6, Face.BACK),
                Bore.through(300, 150, 64),
                new Bore(500, 250, 35, 12, Face.FRONT)));
    JsonNode file = read("stand/top", panel, DxfVersion.R2000, DxfUnit.MM);
    JsonNode layers = file.get("layers");
    assertEquals(
        Set.of(
            "0",
            "outline",
            "opening",
            "groove-9mm525-front",
            "dado-6mm-back",
            "bore-through",
            "bore-12mm-front",
            "label"),
        names(layers));
    assertEquals(180_000, layers.at("/outline/areas/0").asDouble(), 1e-6);
    assertEquals(2000 + Math.PI * 100, layers.at("/opening/areas/0").asDouble(), 1e-6);
    assertEquals(11_430, layers.at("/groove-9mm525-front/areas/0").asDouble(), 1e-6);
    assertEquals(5400, layers.at("/dado-6mm-back/areas/0").asDouble(), 1e-6);
    assertEquals(32, layers.at("/bore-through/radii/0").asDouble(), 1e-9);
    assertEquals(17.5, layers.at("/bore-12mm-front/radii/0").asDouble(), 1e-9);
    assertEquals("stand/top", layers.at("/label/texts/0").asText());
    assertEquals("600 x 300 x 18 mm", layers.at("/label/texts/1").asText());
    assertEquals(600, file.at("/high/0").asDouble(), 1e-9);
    assertEquals(300, file.at("/high/1").asDouble(), 1e-9);
    assertTrue(file.at("/low/1").asDouble() < 0, "the label stands below the outline");
  }

  @Test
  void write_inInches_dividesBy25Point4() throws IOException {
    Panel panel =
        new Panel(
            Outline.rectangle(0, 0, 508, 254),
            19.05,
            List.of(
                new Recess("groove", Outline.bar(0, 127, 508, 127, 12.7), 9.525, Face.FRONT),
                Bore.through(254, 200, 50.8)));
    JsonNode layers = read("lid", panel, DxfVersion.R2000, DxfUnit.INCH).get("layers");
    assertEquals(200, layers.at("/outline/areas/0").asDouble(), 1e-9);
    assertEquals(10, layers.at("/groove-0in375-front/areas/0").asDouble(), 1e-9);
    assertEquals(1, layers.at("/bore-through/radii/0").asDouble(), 1e-12);
    assertEquals("20 x 10 x 0.75 in", layers.at("/label/texts/1").asText());
  }

  /** REF-FIL-08: what the old character set lacks is written in codes, and read back. */
  @ParameterizedTest
  @CsvSource({"R12", "R2000", "R2013"})
  void write_ofForeignLetters_isReadBack(DxfVersion version) throws IOException {
    String id = "kasten/R\u00fcckwand-\u0141\u00f3d\u017a-\u6728";
    Panel panel = new Panel(Outline.rectangle(0, 0, 100, 100), 18);
    JsonNode layers = read(id, panel, version, DxfUnit.MM).get("layers");
    String label = version == DxfVersion.R12 ? "LABEL" : "label";
    assertEquals(id, layers.get(label).get("texts").get(0).asText());
  }

  /** All seven kinds of feature have drawings; the random panels hold every one. */
  @Test
  void samples_holdEveryKindOfFeature() {
    Set<Class<?>> kinds = new HashSet<>();
    RandomPanels.from(SEED, COUNT)
        .forEach(s -> s.panel().features().forEach(feature -> kinds.add(feature.getClass())));
    assertEquals(Set.of(Feature.class.getPermittedSubclasses()), kinds);
  }

  private JsonNode read(String id, Panel panel, DxfVersion version, DxfUnit unit)
      throws IOException {
    JsonNode file =
        OutsideTool.python("read_dxf.py", file("one.dxf", id, panel, version, unit)).json().get(0);
    assertEquals(0, file.get("faults").size() + file.get("repairs").size(), file.toString());
    return file;
  }

  private Object[] files(List<RandomPanels.Sample> samples, DxfVersion version, DxfUnit unit)
      throws IOException {
    List<Object> files = new ArrayList<>();
    for (RandomPanels.Sample sample : samples) {
      files.add(file(sample.seed() + ".dxf", "unit/part", sample.panel(), version, unit));
    }
    return files.toArray();
  }

  private Path file(String name, String id, Panel panel, DxfVersion version, DxfUnit unit)
      throws IOException {
    Path path = folder.resolve(name);
    try (OutputStream out = Files.newOutputStream(path)) {
      DxfWriter.of(unit).in(version).write(id, panel, out);
    }
    return path;
  }

  private static Set<String> names(JsonNode layers) {
    Set<String> names = new TreeSet<>();
    layers.fieldNames().forEachRemaining(names::add);
    return names;
  }

  private static void assertClose(List<Double> expected, JsonNode found, String where) {
    List<Double> numbers = new ArrayList<>();
    found.forEach(number -> numbers.add(number.asDouble()));
    assertClose(expected, numbers, where);
  }

  private static void assertClose(List<Double> expected, List<Double> found, String where) {
    List<Double> wanted = expected.stream().sorted().toList();
    List<Double> given = found.stream().sorted().toList();
    assertEquals(wanted.size(), given.size(), where);
    for (int i = 0; i < wanted.size(); i++) {
      assertEquals(wanted.get(i), given.get(i), 1e-9 * Math.max(1, wanted.get(i)), where);
    }
  }
}
