package sawstead.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import sawstead.outside.OutsideTool;

class BriefEditTest {
  private static final String TEXT =
      """
      # mine
      name: "A \u2192 B" # \ud83e\ude9a stays
      vac: {width: 16, hose: {}}
      saw:
        slots:
          - {at: -5, width: 3/4}
          - at: 5
            width: 3/4 # measured
        cord:
      empty: {}
      """;

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "vac.width | 17-1/2 | {width: 16, | {width: 17-1/2,",
        "saw.slots[1].width | 19 mm | width: 3/4 # measured | width: 19 mm # measured",
        "saw.slots[0].at | -5-1/2 | {at: -5, | {at: -5-1/2,",
        "vac.hose.diameter | 35 | hose: {} | hose: {diameter: 35}",
        "vac.depth | 20 | vac: {width | vac: {depth: 20, width",
        "saw.slots[1].depth | 3/8 | '- at: 5' | '- depth: 3/8\n      at: 5'",
        "saw.mass | 54 lb | 'saw:\n  slots' | 'saw:\n  mass: 54 lb\n  slots'",
        "casters.plate.length | 95 | '# mine\nname' | '# mine\ncasters: {plate: {length: 95}}\nname'",
        "saw.cord | none | 'cord:\n' | 'cord: none\n'",
        "name | 'a: b, c' | '\"A \u2192 B\"' | '''a: b, c'''",
      })
  void set_changesOneValueAndNothingElse(String path, String value, String old, String now) {
    String before = old.translateEscapes();
    assertTrue(TEXT.contains(before), before);
    BriefEdit edit = BriefEdit.set(TEXT, path, value).orElseThrow();
    assertEquals(TEXT.replace(before, now.translateEscapes()), edit.in(TEXT));
  }

  @Test
  void set_whatCannotStandThere_isNothing() {
    assertTrue(BriefEdit.set(TEXT, "name.first", "x").isEmpty(), "a word has no keys");
    assertTrue(BriefEdit.set(TEXT, "saw.slots[7].at", "1").isEmpty(), "no such item");
    assertTrue(BriefEdit.set("{[", "name", "x").isEmpty(), "no YAML");
  }

  /** Every value of every demo, one at a time: the bytes before and after it stay. */
  @ParameterizedTest
  @ValueSource(strings = {"lantern-alley", "granary-loft", "quay-shed", "first-brief"})
  void set_everyValueOfADemo_keepsAllOthers(String demo) throws Exception {
    Path file = OutsideTool.project().resolve("models").resolve(demo + ".yaml");
    String text = Files.readString(file);
    int values = 0;
    for (Map.Entry<String, BriefSpans.Span> entry : BriefSpans.of(text).entrySet()) {
      BriefSpans.Span span = entry.getValue();
      if (span.value().isPresent()) {
        String changed = BriefEdit.set(text, entry.getKey(), "123 mm").orElseThrow().in(text);
        assertEquals(text.substring(0, span.from()), changed.substring(0, span.from()));
        assertTrue(changed.endsWith(text.substring(span.to())), entry.getKey());
        values++;
      }
    }
    assertTrue(values > 20, "values: " + values);
  }
}
