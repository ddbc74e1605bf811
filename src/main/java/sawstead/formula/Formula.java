package sawstead.formula;

import dev.cel.runtime.CelEvaluationException;
import dev.cel.runtime.CelRuntime;
import java.util.Map;
import java.util.Set;

/** A formula that has been read and whose names are known; immutable. */
public final class Formula {

  private final String text;
  private final Set<String> uses;
  private final CelRuntime.Program program;

  Formula(String text, Set<String> uses, CelRuntime.Program program) {
    this.text = text;
    this.uses = Set.copyOf(uses);
    this.program = program;
  }

  /** The formula as written. */
  public String text() {
    return text;
  }

  /** The names that it uses. */
  public Set<String> uses() {
    return uses;
  }

  /**
   * Its value, a finite number.
   *
   * @param values what the names stand for: numbers are {@link Double}, groups are maps
   * @throws FormulaException if it has no value, or one that is not a finite number
   */
  public double number(Map<String, ?> values) throws FormulaException {
    Object value = value(values);
    if (!(value instanceof Number number)) {
      throw new FormulaException(
          "`" + text + "` is " + kind(value) + ", not a number", "write a formula for a number");
    }
    double found = number.doubleValue();
    if (!Double.isFinite(found)) {
      throw new FormulaException(
          "`" + text + "` has no finite value", "see that it never divides by 0");
    }
    return found;
  }

  /**
   * Whether it holds.
   *
   * @throws FormulaException if it has no value, or one that is neither true nor false
   */
  public boolean holds(Map<String, ?> values) throws FormulaException {
    Object value = value(values);
    if (value instanceof Boolean truth) {
      return truth;
    }
    throw new FormulaException(
        "`" + text + "` is " + kind(value) + ", neither true nor false",
        "compare two numbers, such as `depth > 100`");
  }

  private Object value(Map<String, ?> values) throws FormulaException {
    try {
      return program.eval(values);
    } catch (CelEvaluationException broken) {
      throw FormulaWords.of(text, broken);
    }
  }

  private static String kind(Object value) {
    return value instanceof Number
        ? "a number"
        : value instanceof Map
            ? "a group of names"
            : value instanceof Boolean ? "true or false" : "text";
  }
}
