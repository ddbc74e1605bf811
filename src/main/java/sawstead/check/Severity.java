package sawstead.check;

import java.util.Locale;

/** How much a finding weighs, worst first. */
public enum Severity {
  /** Do not cut. */
  STOP,
  /** Look before you cut. */
  MIND,
  /** Good to know. */
  NOTE;

  /** The word that people and the report use: {@code stop}, {@code mind} or {@code note}. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }
}
