package sawstead.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Against YAML 1.2.2, chapters 3.2 (duplicate keys) and 10.3 (core schema). */
class YamlTreeTest {

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '^',
      value = {
        "null|NOTHING", "~|NOTHING", "true|SWITCH", "FALSE|SWITCH", "yes|TEXT", "off|TEXT",
            "12|NUMBER",
        "-0.5|NUMBER", ".5|NUMBER", "1e3|NUMBER", "0x1F|TEXT", "0o7|TEXT", "1_000|TEXT",
            "1:30|TEXT",
        ".inf|TEXT", ".nan|TEXT", "\"12\"|TEXT", "'true'|TEXT", "3/4\"|TEXT", "1e9999|TEXT",
            "2026-01-01|TEXT"
      })
  void read_ofScalars_resolvesByTheCoreSchema(String yaml, Item.Kind kind) throws Exception {
    Item.Listing list = (Item.Listing) YamlTree.read("- " + yaml);
    assertEquals(kind, ((Item.Scalar) list.items().get(0)).type());
  }

  @Test
  void read_keepsLines() throws Exception {
    Item.Table root = (Item.Table) YamlTree.read("a: 1\n\n# c\nb:\n  - 2\n  - {c: 3}\n");
    assertEquals(4, root.members().get("b").keyLine());
    Item.Listing list = (Item.Listing) root.members().get("b").value();
    assertEquals(6, list.items().get(1).line());
    assertEquals("{\"a\":1,\"b\":[2,{\"c\":3}]}", root.json().toString());
  }

  @Test
  void read_ofAnAlias_isTheSameValue() throws Exception {
    Item.Table root = (Item.Table) YamlTree.read("a: &x {b: 1}\nc: *x\n");
    assertEquals("{\"a\":{\"b\":1},\"c\":{\"b\":1}}", root.json().toString());
    assertEquals(5, root.size());
  }

  @Test
  void read_ofAnAliasBomb_stopsBeforeItUnfolds() {
    StringBuilder bomb = new StringBuilder("a0: &a0 [x, x]\n");
    for (int i = 1; i < 200; i++) {
      bomb.append("a").append(i).append(": &a").append(i);
      bomb.append(" [*a").append(i - 1).append(", *a").append(i - 1).append("]\n");
    }
    YamlException refusal = assertThrows(YamlException.class, () -> YamlTree.read(bomb.toString()));
    assertEquals("the file unfolds to more than 200000 values here", refusal.problem().what());
  }

  @Test
  void read_ofManyBrackets_isRefusedWithoutOverflow() {
    YamlException refusal =
        assertThrows(YamlException.class, () -> YamlTree.read("[".repeat(500_000)));
    assertTrue(refusal.problem().what().startsWith("more than 32 levels"), refusal.getMessage());
  }

  @Test
  void read_ofADuplicateKey_namesBothLines() {
    YamlException refusal =
        assertThrows(YamlException.class, () -> YamlTree.read("a: 1\nb: 2\na: 3\n"));
    assertEquals(
        "the key `a` stands here a second time (first in line 1)", refusal.problem().what());
    assertEquals(3, refusal.problem().line());
  }

  @Test
  void read_ofAListAsKey_isRefused() {
    YamlException refusal =
        assertThrows(YamlException.class, () -> YamlTree.read("? [a, b]\n: 1\n"));
    assertEquals("a key must be one plain word", refusal.problem().what());
  }
}
