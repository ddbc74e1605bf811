package sawstead.walk;

import java.util.Objects;

/**
 * What was answered to one question.
 *
 * @param path of the question, such as {@code saw.slots[0].width}
 * @param said {@link #TYPICAL}, {@link #UNKNOWN}, or what was measured or chosen
 * @param written what the brief says for it; empty if the brief leaves the key out
 */
public record Answer(String path, String said, String written) {
  /** The default was taken. */
  public static final String TYPICAL = "typical";

  /** Nobody knows. */
  public static final String UNKNOWN = "unknown";

  /** Refuses nulls and line ends, which no answer has. */
  public Answer {
    Objects.requireNonNull(path, "path");
    if (said.isBlank() || (said + written).indexOf('\n') >= 0) {
      throw new IllegalArgumentException("an answer is one line with something on it");
    }
  }

  /** Whether something stands in for a measurement. */
  public boolean isStandIn() {
    return said.equals(UNKNOWN) || said.equals(TYPICAL);
  }
}
