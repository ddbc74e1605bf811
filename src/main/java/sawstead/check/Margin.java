package sawstead.check;

import java.util.List;
import java.util.Objects;

/**
 * By how much something fits: what there is, what is needed, and so what is to spare. A figure
 * without a margin is half an answer.
 *
 * @param name stable key, {@code vac-headroom}
 * @param what it is, in the words of the trade: {@code free above the vac}
 * @param about ids of what it is about
 * @param dimension what the numbers count
 * @param has what there is, mm, kg or N
 * @param needs the least that there should be
 */
public record Margin(
    String name, String what, List<String> about, Dimension dimension, double has, double needs) {

  /** Refuses a margin without words or with numbers that are none. */
  public Margin {
    Objects.requireNonNull(dimension, "dimension");
    about = List.copyOf(about);
    if (name.isBlank() || what.isBlank()) {
      throw new IllegalArgumentException("a margin says what it is about");
    }
    if (!Double.isFinite(has) || !Double.isFinite(needs)) {
      throw new IllegalArgumentException(name + " is not a finite number");
    }
  }

  static Margin length(String name, String what, List<String> about, double has, double needs) {
    return new Margin(name, what, about, Dimension.LENGTH, has, needs);
  }

  /** What is left over; negative when it does not fit. */
  public double spare() {
    return has - needs;
  }
}
