package sawstead.preview.form;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import sawstead.intake.BriefSchema;
import sawstead.intake.BriefSpans;
import sawstead.measure.Unit;
import sawstead.preview.scene.Demo;

class CardsTest {
  private static List<String> paths(List<Card> cards) {
    return cards.stream()
        .flatMap(c -> c.groups().stream())
        .flatMap(g -> g.fields().stream())
        .map(Field::path)
        .toList();
  }

  @Test
  void of_theSchema_hasAFieldForEveryPlainValueOfADemo() {
    var spans = BriefSpans.of(Demo.text("lantern-alley"));
    List<String> fields = paths(Cards.of(BriefSchema.expanded(), spans.keySet(), Unit.MM));
    List<String> missing =
        spans.entrySet().stream()
            .filter(e -> e.getValue().value().isPresent())
            .map(e -> e.getKey())
            // A point or a row of numbers is for the text; so is the word that stands for a
            // section.
            .filter(p -> !p.matches(".*\\[\\d+]\\[\\d+]"))
            .filter(p -> !fields.contains(p))
            .toList();
    assertEquals(List.of(), missing);
  }

  @Test
  void of_aKeyAddedToTheSchema_isThereWithoutCode() {
    ObjectNode schema = BriefSchema.expanded().deepCopy();
    ObjectNode vac = (ObjectNode) schema.at("/properties/vac/properties");
    vac.putObject("colour").put("title", "colour of the vac").put("type", "string");
    assertTrue(paths(Cards.of(schema, Set.of(), Unit.MM)).contains("vac.colour"));
  }

  @Test
  void of_lists_haveAGroupForEachItemOfTheText() throws Exception {
    var schema =
        new ObjectMapper()
            .readTree(
                """
                {"properties": {"slots": {"title": "slots", "type": "array", "items":
                  {"title": "slot", "properties": {"at": {"title": "place", "enum": ["a"]}}}}}}
                """);
    List<Card> cards = Cards.of(schema, Set.of("slots[0]", "slots[1]"), Unit.MM);
    assertEquals(List.of("slots[0].at", "slots[1].at"), paths(cards));
    assertEquals("slot 2", cards.get(0).groups().get(1).title());
    assertEquals(List.of("a"), cards.get(0).groups().get(1).fields().get(0).choices());
  }

  @Test
  void of_listsOfNumbers_aPersonReadsWhichNumberItIs() throws Exception {
    var schema =
        new ObjectMapper()
            .readTree(
                """
                {"properties": {"board": {"title": "board", "properties": {
                  "place": {"title": "place", "properties": {"at": {"title": "place",
                    "type": "array", "x-names": ["x", "y"], "items": {"x-unit": "mm"}}}},
                  "outline": {"title": "outline", "type": "array", "items": {"title": "corner",
                    "type": "array", "x-names": ["along", "across"], "items": {"x-unit": "mm"}}},
                  "bits": {"title": "bits", "type": "array",
                    "items": {"title": "bit", "x-unit": "mm"}}}}}}
                """);
    Set<String> paths =
        Set.of(
            "board.place.at[0]",
            "board.place.at[1]",
            "board.outline[0]",
            "board.outline[0][0]",
            "board.outline[1]",
            "board.outline[1][0]",
            "board.outline[1][1]",
            "board.bits[0]");
    List<Card.Group> groups = Cards.of(schema, paths, Unit.MM).get(0).groups();
    assertEquals(
        List.of("place", "outline", "bits"), groups.stream().map(Card.Group::title).toList());
    assertEquals(
        List.of("x", "y", "corner 1, along", "corner 2, along", "corner 2, across", "bit"),
        groups.stream().flatMap(g -> g.fields().stream()).map(Field::title).toList());
  }
}
