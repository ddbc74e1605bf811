package sawstead.preview.bench;

import java.util.Objects;

/**
 * What came of trying one value of a brief against a finding.
 *
 * @param path of the value
 * @param worth what it is worth
 * @param value what it must be set to at least, as the brief says it; empty unless it mends
 */
public record Trial(String path, Worth worth, String value) {
  /** How much a value does about a finding, most first. */
  public enum Worth {
    /** Nothing forbids cutting any more. */
    MENDS_ALL,
    /** The finding is gone and nothing worse came; others that forbid cutting are still there. */
    MENDS,
    /** It changes the finding, but does not mend it alone. */
    BEARS,
    /** It has nothing to do with it. */
    NOTHING
  }

  /** Refuses what mends without saying how. */
  public Trial {
    Objects.requireNonNull(path, "path");
    if (worth.compareTo(Worth.BEARS) < 0 == value.isEmpty()) {
      throw new IllegalArgumentException(path + " " + worth + " with `" + value + "`");
    }
  }

  /** Whether the value alone mends it. */
  public boolean mends() {
    return worth.compareTo(Worth.BEARS) < 0;
  }
}
