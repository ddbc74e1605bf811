package sawstead.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sawstead.measure.LengthText;
import sawstead.measure.Parsed;
import sawstead.measure.Unit;

/** The schema is a schema (by the 2020-12 metaschema), and its own words agree with each other. */
class BriefSchemaTest {

  @Test
  void text_isValidByTheMetaschema() {
    // JSON Schema 2020-12, https://json-schema.org/draft/2020-12/schema
    Schema metaschema =
        SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
            .getSchema(SchemaLocation.of(SpecificationVersion.DRAFT_2020_12.getDialectId()));
    assertEquals(List.of(), metaschema.validate(BriefSchema.root()));
  }

  @ParameterizedTest
  @CsvSource({
    // 25.4 mm to the inch (REF-NUM-01): 26-1/2 in is 673.1 mm, 9.5 mm is 0.374 in, near 3/8.
    "[26-1/2 in], MM, 673 mm",
    "[26-1/2 in], INCH, 26-1/2 in",
    "[3/4 in; 19.05 mm], MM, 19.05 mm",
    "[3/4 in; 19.05 mm], INCH, 3/4 in",
    "[9.5 mm], INCH, 3/8 in",
    "[-5-1/2 in], MM, -140 mm",
    "[], MM, ''",
  })
  void example_isInTheUnitOfWhoMeasures(String examples, Unit unit, String expected) {
    ObjectNode key = JsonNodeFactory.instance.objectNode().put("x-unit", "mm");
    ArrayNode list = key.putArray("examples");
    for (String one : examples.substring(1, examples.length() - 1).split("; ")) {
      if (!one.isEmpty()) {
        list.add(one);
      }
    }
    assertEquals(expected, BriefSchema.example(key, unit));
  }

  @Test
  void examples_ofEveryLength_canBeReadInEitherUnit() {
    for (JsonNode key : BriefSchema.expanded().findParents("x-unit")) {
      if (key.path("x-unit").asText().equals("mm")) {
        for (Unit unit : Unit.values()) {
          String example = BriefSchema.example(key, unit);
          assertTrue(
              example.isEmpty() || LengthText.parse(example, unit) != null, key + ": " + example);
        }
      }
    }
  }

  @Test
  void measures_haveExamplesAndDefaultsWithinTheirRange() {
    List<String> wrong = new ArrayList<>();
    for (JsonNode key : BriefSchema.expanded().findParents("x-min")) {
      MeasureKind kind = MeasureKind.of(key.path("x-unit").asText());
      List<JsonNode> values = new ArrayList<>();
      key.path("examples").forEach(values::add);
      if (key.has("default")) {
        values.add(key.path("default"));
      }
      for (JsonNode value : values) {
        Parsed parsed = kind.parse(value.asText(), Unit.MM);
        boolean within =
            parsed.nominal() >= key.path("x-min").asDouble()
                && parsed.nominal() <= key.path("x-max").asDouble();
        boolean unitWritten = kind != MeasureKind.LENGTH || parsed.written() != null;
        if (!within || !unitWritten) {
          wrong.add(key.path("title").asText(key.path("description").asText()) + ": " + value);
        }
      }
    }
    assertEquals(List.of(), wrong);
  }

  @Test
  void defaults_ofMeasuredValues_haveABand() {
    List<String> wrong = new ArrayList<>();
    for (String kind : List.of("tape", "fine", "signed", "mass", "angle", "density")) {
      for (JsonNode node : BriefSchema.root().findParents("$ref")) {
        boolean ofKind = node.path("$ref").asText().equals("#/$defs/" + kind);
        boolean measured = ofKind && node.path("x-band").asDouble(1) > 0;
        boolean standsIn = node.has("default") || node.has("x-default-from");
        boolean free = node.path("x-default-from").asText().startsWith("the design");
        boolean fromNominal = node.path("x-default-from").asText().startsWith("the nominal");
        if (measured && standsIn && !free && !fromNominal && !node.has("x-default-band")) {
          wrong.add(node.path("title").asText());
        }
      }
    }
    assertEquals(List.of(), wrong);
  }

  @Test
  void text_isWhatIsUsed() {
    assertTrue(BriefSchema.text().startsWith("{"));
    assertTrue(BriefSchema.text().contains("\"workingHeight\""));
  }
}
