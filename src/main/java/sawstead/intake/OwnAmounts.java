package sawstead.intake;

import com.fasterxml.jackson.databind.JsonNode;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import sawstead.formula.Formula;
import sawstead.formula.FormulaException;
import sawstead.formula.Language;
import sawstead.measure.AmountFormatException;
import sawstead.measure.Unit;

/**
 * Amounts of a unit file: a number is mm (kg, degrees), a text with a unit is what it says, any
 * other text is a formula. Only where the schema expects a measure.
 */
final class OwnAmounts {

  /** What a woodworker means by this is inches, and a formula would make it a quotient. */
  private static final Pattern BARE_FRACTION = Pattern.compile("\\s*(\\d+[ -]+)?\\d+/\\d+\\s*");

  private final Language language;

  OwnAmounts(Language language) {
    this.language = language;
  }

  /** What gives formulas their values. */
  @FunctionalInterface
  interface Sum {
    double of(Formula formula) throws FormulaException;
  }

  /** A problem at a line of the unit file. */
  static final class Refused extends Exception {
    private static final long serialVersionUID = 1L;
    private final int line;
    private final String remedy;

    Refused(int line, String path, String what, String remedy) {
      super(path + ": " + what);
      this.line = line;
      this.remedy = remedy;
    }

    int line() {
      return line;
    }

    String remedy() {
      return remedy;
    }
  }

  /** The value of one amount, in the unit of its kind. */
  double amount(Item item, MeasureKind kind, String path, Sum sum) throws Refused {
    if (!(item instanceof Item.Scalar scalar)) {
      throw new Refused(
          item.line(),
          path,
          "this is " + item.kind() + ", not a value",
          "write a number or a formula");
    }
    if (scalar.type() == Item.Kind.NUMBER) {
      double value = Double.parseDouble(scalar.text());
      if (Double.isFinite(value)) {
        return value;
      }
    }
    if (BARE_FRACTION.matcher(scalar.text()).matches()) {
      throw new Refused(
          item.line(),
          path,
          "`" + scalar.text() + "` has no unit, and numbers of a unit file are mm",
          "write `" + scalar.text().strip() + " in`");
    }
    try {
      return kind.parse(scalar.text(), null).nominal();
    } catch (AmountFormatException noUnit) {
      return summed(scalar, path, sum);
    }
  }

  private double summed(Item.Scalar scalar, String path, Sum sum) throws Refused {
    try {
      return sum.of(language.formula(scalar.text()));
    } catch (FormulaException broken) {
      throw new Refused(scalar.line(), path, broken.getMessage(), broken.remedy());
    }
  }

  /** Whether a condition holds. */
  boolean holds(Item item, String path, Map<String, ?> names) throws Refused {
    Item.Scalar scalar = (Item.Scalar) item;
    try {
      return language.formula(scalar.text()).holds(names);
    } catch (FormulaException broken) {
      throw new Refused(item.line(), path, broken.getMessage(), broken.remedy());
    }
  }

  /** Reads a condition without asking whether it holds. */
  void read(Item item, String path) throws Refused {
    try {
      language.formula(((Item.Scalar) item).text());
    } catch (FormulaException broken) {
      throw new Refused(item.line(), path, broken.getMessage(), broken.remedy());
    }
  }

  /** The same tree with every measure worked out to a number. */
  Item settled(Item item, JsonNode schema, String path, Sum sum) throws Refused {
    if (item instanceof Item.Scalar scalar) {
      if (!schema.has("x-unit")) {
        return item;
      }
      MeasureKind kind = MeasureKind.of(schema.path("x-unit").asText());
      double value = amount(scalar, kind, path, sum);
      return new Item.Scalar(
          item.line(), BigDecimal.valueOf(value).toPlainString(), Item.Kind.NUMBER);
    }
    if (item instanceof Item.Listing list) {
      List<Item> items = new ArrayList<>();
      for (Item each : list.items()) {
        String below = path + "[" + items.size() + "]";
        items.add(settled(each, BriefSchema.items(schema), below, sum));
      }
      return new Item.Listing(item.line(), items, item.size());
    }
    Item.Table table = (Item.Table) item;
    Map<String, Item.Member> members = new LinkedHashMap<>();
    for (Map.Entry<String, Item.Member> member : table.members().entrySet()) {
      String key = member.getKey();
      Item value = member.getValue().value();
      Item settled = settled(value, BriefSchema.key(schema, key), path + "." + key, sum);
      members.put(key, new Item.Member(member.getValue().keyLine(), settled));
    }
    return new Item.Table(item.line(), members, item.size());
  }

  /** A length written in a brief, for a parameter. */
  static double given(String text, boolean length, Unit units) throws AmountFormatException {
    return length
        ? MeasureKind.LENGTH.parse(text, units).nominal()
        : new BigDecimal(text).doubleValue();
  }
}
