package sawstead.check;

import java.util.ArrayList;
import java.util.List;
import sawstead.station.Part;

/**
 * {@code two-people} (note): what weighs more than one person should lift. The figure is common
 * practice, no source; where local rules ask for less, they rule.
 */
final class LiftCheck implements Check {
  /** Over this, two people, kg (common practice, no source). */
  static final double ONE_PERSON = 23;

  @Override
  public Outcome judge(Scene scene) {
    List<String> heavy = new ArrayList<>();
    List<String> words = new ArrayList<>();
    for (Part part : scene.parts()) {
      if (part.mass() > ONE_PERSON) {
        String name = part.id().equals("saw/body") ? "the saw" : part.id();
        heavy.add(part.id());
        words.add(name + " (" + scene.words().mass(part.mass()) + ")");
      }
    }
    if (heavy.isEmpty()) {
      return Outcome.of(List.of());
    }
    return Outcome.of(
        List.of(
            Finding.general(
                Severity.NOTE,
                "two-people",
                heavy,
                Words.some(words) + ": more than one person should lift",
                "ask a helper before that step")));
  }
}
