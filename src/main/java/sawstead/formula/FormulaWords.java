package sawstead.formula;

import dev.cel.common.CelIssue;
import dev.cel.common.CelValidationException;
import dev.cel.runtime.CelEvaluationException;
import java.util.Collection;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Puts what the language says of a formula into words for a woodworker. */
final class FormulaWords {

  private static final Pattern UNKNOWN = Pattern.compile("undeclared reference to '([^']*)'");
  private static final Pattern NO_KEY =
      Pattern.compile(
          "key '([^']*)' is not present in map|No such key: (\\S+)|no such key: (\\S+)");
  private static final Pattern NO_FIT = Pattern.compile("found no matching overload for '([^']*)'");

  private FormulaWords() {}

  static FormulaException of(String text, CelValidationException broken, Collection<String> names) {
    CelIssue first = broken.getErrors().get(0);
    Matcher unknown = UNKNOWN.matcher(first.getMessage());
    if (unknown.find()) {
      return new FormulaException(
          "there is no name `" + unknown.group(1) + "` in `" + text + "`",
          "use one of " + String.join(", ", new TreeSet<>(names)));
    }
    Matcher noFit = NO_FIT.matcher(first.getMessage());
    if (noFit.find()) {
      return new FormulaException(
          "`" + operator(noFit.group(1)) + "` cannot take what `" + text + "` gives it",
          "see that numbers meet numbers and that functions get as many as they need");
    }
    return new FormulaException(
        "`" + text + "` is no formula: " + plain(first.getMessage()),
        "write a sum such as `width - 2 * wall`, or a length with its unit, such as `3/4 in`");
  }

  static FormulaException of(String text, CelEvaluationException broken) {
    String said = String.valueOf(broken.getMessage());
    Matcher noKey = NO_KEY.matcher(said);
    if (noKey.find()) {
      String key = noKey.group(1) != null ? noKey.group(1) : lastOf(noKey);
      return new FormulaException(
          "there is no `" + key + "` where `" + text + "` looks for it",
          "check the name, and that the brief has that section");
    }
    return new FormulaException(
        "`" + text + "` has no value: " + plain(said), "see that numbers meet numbers in it");
  }

  private static String lastOf(Matcher matcher) {
    return matcher.group(2) != null ? matcher.group(2) : matcher.group(3);
  }

  private static String operator(String name) {
    return name.replace("_", "").replace("@", "");
  }

  private static String plain(String message) {
    return message
        .lines()
        .findFirst()
        .orElse("")
        .replaceAll("^evaluation error[^:]*: ", "")
        .strip();
  }
}
