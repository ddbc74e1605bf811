package sawstead.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
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
