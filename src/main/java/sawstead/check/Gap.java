package sawstead.check;

import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * The free way of an envelope in the six directions of the station.
 *
 * @param id of the envelope
 * @param ways in the order of {@link Way}; empty where nothing is met
 */
public record Gap(String id, List<Optional<Free>> ways) {

  /**
   * A free way that ends at a body.
   *
   * @param way mm that the envelope can be pushed, or grown, before it touches; 0 when it touches
   * @param to id of what it then touches
   */
  public record Free(double way, String to) {
    public Free {
      Objects.requireNonNull(to, "to");
      if (!(way >= 0)) {
        throw new IllegalArgumentException("a free way is 0 or more, found " + way);
      }
    }
  }

  /** Refuses a gap that does not know all six directions. */
  public Gap {
    Objects.requireNonNull(id, "id");
    ways = List.copyOf(ways);
    if (ways.size() != Way.values().length) {
      throw new IllegalArgumentException("a gap has six directions, found " + ways.size());
    }
  }

  /** The free way in one direction; empty when nothing is met. */
  public Optional<Free> way(Way way) {
    return ways.get(way.ordinal());
  }
}
