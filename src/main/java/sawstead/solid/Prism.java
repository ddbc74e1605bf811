package sawstead.solid;

/**
 * An outline with a height range, that adds or removes material.
 *
 * @param outline in (u, v)
 * @param low w where it begins, mm
 * @param high w where it ends, mm
 * @param adds true for material, false for a cut
 * @param isRoundHole true for a cut that overlap and distance leave filled until it matters
 */
record Prism(Outline outline, double low, double high, boolean adds, boolean isRoundHole) {
  static Prism added(Outline outline, double low, double high) {
    return new Prism(outline, low, high, true, false);
  }

  static Prism removed(Outline outline, double low, double high) {
    return new Prism(outline, low, high, false, outline.isCircle());
  }

  /** The box around it in the solid's own frame. */
  Piece box() {
    Box plan = outline.bounds();
    double u0 = plan.low().x();
    double v0 = plan.low().y();
    double u1 = plan.high().x();
    double v1 = plan.high().y();
    return Piece.prism(new double[] {u0, v0, u1, v0, u1, v1, u0, v1}, low, high);
  }
}
