package sawstead.brief;

/** Where a drawer runs. */
public enum DrawerPlace {
  /** In a case of its own, that stands beside the station. */
  CASE,
  /** In the cubby of the left wing. */
  WING_LEFT,
  /** In the cubby of the right wing. */
  WING_RIGHT
}
