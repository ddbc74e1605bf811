package sawstead.walk;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import sawstead.measure.AmountFormatException;
import sawstead.measure.LengthFormat;
import sawstead.measure.LengthText;
import sawstead.measure.Unit;

/** Says when an answer is far from what is typical, as after a slip of the unit. */
final class Usual {
  private static final double FAR = 2.5;

  private Usual() {}

  static List<String> remarks(Node node, String said, Answers answers) {
    if (!node.schema().path("x-unit").asText().equals("mm")) {
      return List.of();
    }
    Unit unit = answers.unit();
    List<Double> usual = new ArrayList<>();
    node.schema()
        .path("x-typical")
        .forEach(t -> usual.add(Math.abs(LengthText.parse(t.asText(), unit).nominal())));
    if (usual.isEmpty()) {
      return List.of();
    }
    double least = usual.stream().mapToDouble(x -> x).min().orElseThrow();
    double most = usual.stream().mapToDouble(x -> x).max().orElseThrow();
    try {
      double value = Math.abs(LengthText.parse(said, unit).nominal());
      if (value * FAR < least || value > most * FAR) {
        LengthFormat format = LengthFormat.of(unit);
        return List.of(
            String.format(
                Locale.ROOT,
                "taken; but %s is far from the usual %s to %s: is the unit right?",
                format.withUnit(value),
                format.withUnit(least),
                format.withUnit(most)));
      }
    } catch (AmountFormatException notALength) {
      return List.of();
    }
    return List.of();
  }
}
