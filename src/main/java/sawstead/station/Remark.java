package sawstead.station;

import java.util.List;

/**
 * What a unit has to say about its own design: a screw that found no room, a wing that had to be
 * lowered.
 *
 * @param grave whether cutting should wait until the user has looked
 * @param rule stable short code
 * @param about ids
 * @param says what is so
 * @param remedy what to do, empty when nothing need be done
 */
public record Remark(Weight grave, String rule, List<String> about, String says, String remedy) {

  /** How much a remark weighs. */
  public enum Weight {
    /** Do not cut. */
    STOP,
    /** Look before you cut. */
    MIND,
    /** Good to know. */
    NOTE
  }

  public Remark {
    about = List.copyOf(about);
    if (says.isBlank()) {
      throw new IllegalArgumentException("a remark without words: " + rule);
    }
  }
}
