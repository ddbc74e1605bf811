package sawstead.solid;

/**
 * An outline with a height range, that adds or removes material.
 *
 * @param outline in (u, v)
 * @param low w where it begins, mm
 * @param high w where it ends, mm
 * @param adds true for material, false for a cut
 */
record Prism(Outline outline, double low, double high, boolean adds) {
  static Prism added(Outline outline, double low, double high) {
    return new Prism(outline, low, high, true);
  }

  static Prism removed(Outline outline, double low, double high) {
    return new Prism(outline, low, high, false);
  }
}
