package sawstead.layout;

/**
 * How one cut is led.
 *
 * @param guide what leads it
 * @param setting distance from fence or stop to blade in steps, -1 along the rail and at the
 *     seller's
 * @param safe whether all rules are kept
 */
record Guidance(Guide guide, int setting, boolean safe) {
  static Guidance rail(boolean safe) {
    return new Guidance(Guide.RAIL, -1, safe);
  }

  static Guidance seller() {
    return new Guidance(Guide.SELLER, -1, true);
  }
}
