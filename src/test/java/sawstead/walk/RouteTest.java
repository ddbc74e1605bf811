package sawstead.walk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import sawstead.intake.BriefSchema;

class RouteTest {

  /** Whoever measures it is asked for it, or the schema says why not. */
  @Test
  void everyKeyOfTheSchema_isAskedOrSaysWhyNot() {
    List<String> silent = new ArrayList<>();
    int asked = visit(Node.root(BriefSchema.expanded()), silent);
    assertEquals(List.of(), silent, "neither asked (x-walk) nor with a reason (x-walk-why)");
    assertTrue(asked > 200, asked + " keys are asked");
  }

  private static int visit(Node section, List<String> silent) {
    int asked = 0;
    for (Node key : section.keys()) {
      if (key.schema().path("x-walk").asText().equals(Node.NEVER)) {
        if (key.schema().path("x-walk-why").asText().isBlank()) {
          silent.add(key.path());
        }
        continue;
      }
      if (key.isAsked()) {
        asked++;
      } else if (!key.isSection()) {
        silent.add(key.path());
      }
      if (key.isSection()) {
        asked += visit(key, silent);
      } else if (key.isList() && key.item(0).isSection()) {
        asked += visit(key.item(0), silent);
      }
    }
    return asked;
  }

  @Test
  void everyStop_asksSomething() {
    List<String> stops = new ArrayList<>();
    BriefSchema.expanded().path("x-walk-stops").fieldNames().forEachRemaining(stops::add);
    String schema = BriefSchema.text();
    for (String stop : stops) {
      assertTrue(schema.contains("\"x-walk\": \"" + stop + "\""), stop);
    }
  }
}
