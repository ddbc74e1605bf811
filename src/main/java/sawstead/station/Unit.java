package sawstead.station;

/**
 * One unit of a station: the stand, a wing, the outfeed, a sled. All units work on one draft in
 * three rounds, so that holes are known before screws look for room: first every unit places its
 * bodies and boards, then every unit cuts ports, grooves and bolt holes, then every unit joins.
 *
 * <p>To add a unit: one class that implements this, one line in the list of units.
 */
public interface Unit {

  /** Places bodies and blank boards, and says in which steps they are built. */
  void place(Draft draft);

  /** Cuts what must be there before screws are set. */
  default void cut(Draft draft) {}

  /** Joins its boards. */
  default void join(Draft draft) {}
}
