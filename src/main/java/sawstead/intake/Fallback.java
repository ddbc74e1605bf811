package sawstead.intake;

import java.util.OptionalDouble;

/**
 * What stands in for a measure that a brief does not give.
 *
 * @param nominal in the key's unit; empty if only the schema may have a default
 * @param band in the key's unit; empty if the schema says it
 */
record Fallback(OptionalDouble nominal, OptionalDouble band) {

  static Fallback none() {
    return new Fallback(OptionalDouble.empty(), OptionalDouble.empty());
  }

  static Fallback of(double nominal) {
    return new Fallback(OptionalDouble.of(nominal), OptionalDouble.empty());
  }

  static Fallback of(double nominal, double band) {
    return new Fallback(OptionalDouble.of(nominal), OptionalDouble.of(band));
  }
}
