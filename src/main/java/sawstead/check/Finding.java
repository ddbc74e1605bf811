package sawstead.check;

import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.regex.Pattern;
import sawstead.solid.Vec;

/**
 * One thing that a check has to say about a station.
 *
 * @param severity how much it weighs
 * @param rule stable short code in kebab-case, {@code screw-breakthrough}: what tests, users and
 *     the list in the README name it by
 * @param about ids of bodies, fasteners or motions, or paths of the brief; the first is the one to
 *     look at
 * @param at a point to look at, station frame, mm, where there is one
 * @param says what is so, a sentence without a full stop
 * @param remedy what to do about it, a sentence without a full stop
 */
public record Finding(
    Severity severity,
    String rule,
    List<String> about,
    Optional<Vec> at,
    String says,
    String remedy) {

  /** Worst first; equal ones by rule, then by what they are about, so that a report is stable. */
  public static final Comparator<Finding> WORST_FIRST =
      Comparator.comparing(Finding::severity)
          .thenComparing(Finding::rule)
          .thenComparing(f -> String.join(" ", f.about()))
          .thenComparing(Finding::says);

  private static final Pattern CODE = Pattern.compile("[a-z][a-z0-9]*(-[a-z0-9]+)*");

  /** Refuses a finding without words, and a rule that is no code. */
  public Finding {
    Objects.requireNonNull(severity, "severity");
    Objects.requireNonNull(at, "at");
    about = List.copyOf(about);
    if (!CODE.matcher(rule).matches()) {
      throw new IllegalArgumentException("a rule is a code such as screw-edge, found: " + rule);
    }
    if (says.isBlank() || remedy.isBlank()) {
      throw new IllegalArgumentException(
          "a finding says what is so and what to do: " + rule + " does not");
    }
  }

  /** A finding that forbids cutting. */
  static Finding stop(String rule, List<String> about, Vec at, String says, String remedy) {
    return new Finding(Severity.STOP, rule, about, Optional.of(at), says, remedy);
  }

  /** A finding to look at before cutting. */
  static Finding mind(String rule, List<String> about, Vec at, String says, String remedy) {
    return new Finding(Severity.MIND, rule, about, Optional.of(at), says, remedy);
  }

  /** A finding of any weight that has no one place. */
  static Finding general(
      Severity severity, String rule, List<String> about, String says, String remedy) {
    return new Finding(severity, rule, about, Optional.empty(), says, remedy);
  }
}
