package sawstead.cli;

import sawstead.check.Severity;

/**
 * Colours of a terminal, nearest to the tokens of the look: vermilion, ochre, lichen. The word
 * always stands beside the colour, so nothing is lost without it.
 *
 * @param on whether to colour
 */
record Paint(boolean on) {
  private static final String END = "\u001b[0m";

  /** The word of a severity in its colour. */
  String severity(Severity severity) {
    return switch (severity) {
      case STOP -> stop(severity.word());
      case MIND -> in("33", severity.word());
      case NOTE -> in("32", severity.word());
    };
  }

  /** Vermilion. */
  String stop(String text) {
    return in("31", text);
  }

  /** What the eye should meet first. */
  String strong(String text) {
    return in("1", text);
  }

  /** What the eye may skip. */
  String faint(String text) {
    return in("2", text);
  }

  private String in(String code, String text) {
    return on ? "\u001b[" + code + "m" + text + END : text;
  }
}
