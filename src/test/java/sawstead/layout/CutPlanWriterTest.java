package sawstead.layout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import sawstead.layout.packing.Watch;

class CutPlanWriterTest {
  private static List<String> keys(JsonNode node) {
    List<String> keys = new ArrayList<>();
    node.fieldNames().forEachRemaining(keys::add);
    return keys;
  }

  @Test
  void json_hasExactlyTheAgreedKeys() throws Exception {
    CutPlan plan = CutPlanner.plan(RandomRequests.project(3), new Effort(0.02, 1, 1), Watch.NONE);
    JsonNode root = new ObjectMapper().readTree(CutPlanWriter.json(plan));
    assertEquals(List.of("format", "lowerBound", "sheets", "settings", "offcuts"), keys(root));
    assertEquals("sawstead-breakdown/1", root.get("format").asText());
    assertEquals(plan.sheets().size(), root.get("sheets").size());
    boolean guided = false;
    boolean table = false;
    for (JsonNode sheet : root.get("sheets")) {
      assertEquals(List.of("stock", "size", "pieces", "cuts"), keys(sheet));
      assertEquals(2, sheet.get("size").size());
      for (JsonNode piece : sheet.get("pieces")) {
        assertEquals(List.of("part", "at", "size", "turned"), keys(piece));
        assertTrue(piece.get("turned").isBoolean());
      }
      for (JsonNode cut : sheet.get("cuts")) {
        assertEquals(List.of("order", "tool", "along", "at", "from", "to", "setting"), keys(cut));
        guided |= cut.get("tool").asText().equals("guided") && cut.get("setting").isNull();
        table |= cut.get("tool").asText().equals("table") && cut.get("setting").isNumber();
        assertTrue(List.of("length", "width").contains(cut.get("along").asText()));
      }
    }
    assertTrue(guided && table);
  }
}
