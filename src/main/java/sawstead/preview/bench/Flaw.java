package sawstead.preview.bench;

import java.util.Objects;

/**
 * What keeps a text from becoming a station.
 *
 * @param line from 1; 0 if it is about the whole
 * @param what what is wrong
 * @param remedy what to do
 */
public record Flaw(int line, String what, String remedy) {
  /** Refuses a flaw without words. */
  public Flaw {
    Objects.requireNonNull(what, "what");
    Objects.requireNonNull(remedy, "remedy");
  }
}
