package sawstead.brief;

/** What feeds a tool: behind one with a cord or a hose there has to be room for its bend. */
public enum Power {
  /** The hand that holds it. */
  HAND,
  /** A battery, counted in the tool's grip. */
  BATTERY,
  /** A cord that leaves the end of the grip. */
  CORD,
  /** An air hose that leaves the end of the grip. */
  HOSE
}
