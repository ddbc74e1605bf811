package sawstead.check;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import sawstead.solid.Vec;
import sawstead.station.Mover;

/**
 * What was found about a motion.
 *
 * @param mover what moves and how
 * @param leastClearance least distance on the way to anything that it is not declared to touch, mm;
 *     empty when there is nothing
 * @param firstContact where it is stopped while everything else is at rest; empty when it is clear
 * @param after ids of other motions that clear the way when they are made first; empty when it is
 *     clear without, or is not cleared by any
 */
public record Passage(
    Mover mover,
    Optional<Double> leastClearance,
    Optional<Contact> firstContact,
    List<String> after) {

  /**
   * Where a motion is stopped.
   *
   * @param with id of what stands in the way
   * @param mover id of the moving body that meets it
   * @param at parameter, mm of a slide or degrees of a turn
   * @param point station frame, mm
   */
  public record Contact(String with, String mover, double at, Vec point) {
    public Contact {
      Objects.requireNonNull(with, "with");
      Objects.requireNonNull(mover, "mover");
      Objects.requireNonNull(point, "point");
    }
  }

  /** Refuses missing parts. */
  public Passage {
    Objects.requireNonNull(mover, "mover");
    Objects.requireNonNull(leastClearance, "leastClearance");
    Objects.requireNonNull(firstContact, "firstContact");
    after = List.copyOf(after);
  }
}
