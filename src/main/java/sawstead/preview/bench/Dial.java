package sawstead.preview.bench;

import java.util.List;
import java.util.Objects;
import java.util.function.DoubleFunction;

/** What one value of a brief may be set to. */
public sealed interface Dial {
  /** Of the value in the brief. */
  String path();

  /**
   * A value with marks like those of a rule.
   *
   * @param low least, in the unit of the thumb
   * @param high greatest
   * @param at as it is written
   * @param mark from one mark to the next
   * @param text how the mark nearest to a place of the thumb is written in the brief
   */
  record Rule(
      String path, double low, double high, double at, double mark, DoubleFunction<String> text)
      implements Dial {
    /** Refuses a rule without room or marks. */
    public Rule {
      Objects.requireNonNull(path, "path");
      Objects.requireNonNull(text, "text");
      if (!(low <= at && at <= high && mark > 0)) {
        throw new IllegalArgumentException(
            "no rule: " + path + " from " + low + " to " + high + ", at " + at + " by " + mark);
      }
    }
  }

  /**
   * A choice between words.
   *
   * @param words all of them
   */
  record Words(String path, List<String> words) implements Dial {
    /** Copies the list. */
    public Words {
      Objects.requireNonNull(path, "path");
      words = List.copyOf(words);
    }
  }
}
