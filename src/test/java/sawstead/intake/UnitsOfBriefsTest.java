package sawstead.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.math.MathContext;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import sawstead.brief.Brief;
import sawstead.measure.LengthText;
import sawstead.measure.MassText;
import sawstead.measure.Parsed;
import sawstead.measure.Unit;

/**
 * A brief rewritten in the other unit, length by length, is the same brief. The rewriting divides
 * by 25.4 or 0.45359237 here (values.md, exact constants), apart from the reader.
 */
class UnitsOfBriefsTest {

  static List<Path> good() {
    return Briefs.good();
  }

  @ParameterizedTest
  @MethodSource("good")
  void read_ofTheOtherUnit_isTheSameBrief(Path file) throws Exception {
    ObjectNode tree = Briefs.tree(file);
    Brief before = BriefReader.read(file.toString(), Briefs.bytes(tree));
    Unit from = before.units();
    Unit to = from == Unit.MM ? Unit.INCH : Unit.MM;
    int changed = 0;
    for (Leaves.Leaf leaf : Leaves.of(tree)) {
      String unit = leaf.schema().path("x-unit").asText();
      String text = leaf.value().asText();
      if (text.equals("unknown")) {
        continue;
      }
      if (unit.equals("mm")) {
        replace(leaf, LengthText.parse(text, from), to == Unit.MM ? "1" : "25.4", "");
        changed++;
      } else if (unit.equals("kg")) {
        replace(leaf, MassText.parse(text, from), "0.45359237", " lb");
        changed++;
      }
    }
    tree.put("units", to.key());
    assertTrue(changed >= 6);
    assertSame(before, BriefReader.read(file.toString(), Briefs.bytes(tree)));
  }

  private static void replace(Leaves.Leaf leaf, Parsed value, String factor, String unit) {
    String text = number(value.nominal(), factor) + unit;
    if (value.hasBand()) {
      text += " +" + number(value.plus(), factor) + "/-" + number(value.minus(), factor);
    }
    leaf.replace(JsonNodeFactory.instance.textNode(text));
  }

  private static String number(double value, String factor) {
    return new BigDecimal(value)
        .divide(new BigDecimal(factor), new MathContext(16))
        .toPlainString();
  }

  private static void assertSame(Brief before, Brief after) {
    Map<String, Object> was = FlatBrief.of(before);
    Map<String, Object> is = FlatBrief.of(after);
    assertEquals(was.keySet(), is.keySet());
    // Only the file's units differ, and the trade name made from a thickness when none is given.
    was.keySet()
        .removeIf(
            key ->
                key.equals(".units")
                    || key.endsWith(".nominal") && key.matches("\\.stock\\[\\d+].nominal"));
    was.forEach(
        (path, value) -> {
          if (value instanceof Double number) {
            assertEquals(number, (Double) is.get(path), 1e-9, path);
          } else {
            assertEquals(value, is.get(path), path);
          }
        });
  }
}
