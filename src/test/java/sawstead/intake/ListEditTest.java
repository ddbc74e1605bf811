package sawstead.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ListEditTest {
  private static String after(Optional<BriefEdit> edit, String text) {
    return edit.orElseThrow().in(text);
  }

  @Test
  void add_toAListInLines_comesAfterTheLastItemAndItsComment() {
    String text = "slots:\n  - {at: 1}   # left\n  - {at: 2}   # right\nname: x\n";
    assertEquals(
        "slots:\n  - {at: 1}   # left\n  - {at: 2}   # right\n  - {at: 3}\nname: x\n",
        after(ListEdit.add(text, "slots", "{at: 3}"), text));
  }

  @Test
  void add_toAListInBrackets_toAnEmptyOne_toNone_andToWhatIsNotThere() {
    assertEquals(
        "a: [1, 2]  # c\n", after(ListEdit.add("a: [1]  # c\n", "a", "2"), "a: [1]  # c\n"));
    assertEquals("a: [2]\n", after(ListEdit.add("a: []\n", "a", "2"), "a: []\n"));
    assertEquals("a: [2]\n", after(ListEdit.add("a: none\n", "a", "2"), "a: none\n"));
    assertEquals("b: {a: [2]}\nc: 1\n", after(ListEdit.add("c: 1\n", "b.a", "2"), "c: 1\n"));
  }

  @Test
  void remove_takesOneItemAndLeavesTheOthersAsTheyWere() {
    String lines = "a:\n  - {x: 1} # one\n  # about two\n  - x: 2\n    y: 3\n  - {x: 4}\nb: 1\n";
    assertEquals(
        "a:\n  - {x: 1} # one\n  # about two\n  - {x: 4}\nb: 1\n",
        after(ListEdit.remove(lines, "a", 1), lines));
    String row = "a: [1, 2, 3] # c\n";
    assertEquals("a: [2, 3] # c\n", after(ListEdit.remove(row, "a", 0), row));
    assertEquals("a: [1, 2] # c\n", after(ListEdit.remove(row, "a", 2), row));
    assertEquals("a:\n  []\n", after(ListEdit.remove("a:\n  - 1\n", "a", 0), "a:\n  - 1\n"));
    assertTrue(ListEdit.remove(row, "a", 3).isEmpty());
  }

  @Test
  void writeOut_replacesAWordOrBeginsASection_andNothingElse() {
    String text = "vac: none # no vac\nname: x\n";
    assertEquals(
        "vac: {width: 1} # no vac\nname: x\n",
        after(ListEdit.writeOut(text, "vac", "{width: 1}"), text));
    assertTrue(ListEdit.writeOut("vac: {width: 1}\n", "vac", "{width: 2}").isEmpty());
  }

  /** The examples of the schema make an item that the reader takes. */
  @ParameterizedTest
  @ValueSource(strings = {"saw.slots", "stock", "saw.behind", "station.wings.right.contents"})
  void example_ofTheSchema_isRead(String list) throws Exception {
    String text = Files.readString(Path.of("models/lantern-alley.yaml"));
    String item = ListEdit.example(BriefSchema.at(list), 7);
    String more = after(ListEdit.add(text, list, item), text);
    try {
      BriefReader.read("more", more.getBytes(StandardCharsets.UTF_8));
    } catch (BriefException refused) {
      assertEquals(List.of(), refused.problems());
    }
  }

  @Test
  void section_ofTheSchema_isRead() throws Exception {
    String text = Files.readString(Path.of("models/flawed/deep-slot.yaml"));
    for (String path : List.of("vac", "casters", "station.wings.left")) {
      String yaml = ListEdit.sectionExample(BriefSchema.at(path), 1);
      String more = after(ListEdit.writeOut(text, path, yaml), text);
      assertTrue(more.length() > text.length() - 4, more);
      BriefReader.read("more", more.getBytes(StandardCharsets.UTF_8));
    }
  }
}
