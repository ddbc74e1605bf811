package sawstead.joinery;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import sawstead.solid.Body;

/**
 * What a joint makes of two boards.
 *
 * @param a the first board after the joint
 * @param b the second board after the joint
 * @param fasteners new ones, in the order of their numbers
 * @param bodies new bodies: leaves and knuckle of a hinge
 * @param axis what a hinge turns about; empty for any other joint
 * @param shortfalls in plain words what the joint lacks; empty if it lacks nothing
 */
public record Joined(
    Board a,
    Board b,
    List<Fastener> fasteners,
    List<Body> bodies,
    Optional<HingeLine> axis,
    List<String> shortfalls) {
  /** Copies its lists. */
  public Joined {
    Objects.requireNonNull(a, "a");
    Objects.requireNonNull(b, "b");
    Objects.requireNonNull(axis, "axis");
    fasteners = List.copyOf(fasteners);
    bodies = List.copyOf(bodies);
    shortfalls = List.copyOf(shortfalls);
  }

  /** Boards with a set of fasteners and no hinge. */
  static Joined of(Board a, Board b, Fastened fastened) {
    return new Joined(
        a, b, fastened.fasteners(), List.of(), Optional.empty(), fastened.shortfalls());
  }

  /** The same joint with a and b changed over. */
  Joined swapped() {
    return new Joined(b, a, fasteners, bodies, axis, shortfalls);
  }

  /** The same joint with more said about what it lacks. */
  Joined lacking(List<String> more) {
    List<String> all = new ArrayList<>(shortfalls);
    all.addAll(more);
    return new Joined(a, b, fasteners, bodies, axis, all);
  }
}
