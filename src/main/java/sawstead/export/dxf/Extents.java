package sawstead.export.dxf;

/**
 * Axis-parallel bounds in the drawing's plane, mm.
 *
 * @param lowU least u
 * @param lowV least v
 * @param highU greatest u
 * @param highV greatest v
 */
record Extents(double lowU, double lowV, double highU, double highV) {
  static Extents of(double fromU, double fromV, double toU, double toV) {
    return new Extents(
        Math.min(fromU, toU), Math.min(fromV, toV), Math.max(fromU, toU), Math.max(fromV, toV));
  }

  Extents with(Extents other) {
    return new Extents(
        Math.min(lowU, other.lowU),
        Math.min(lowV, other.lowV),
        Math.max(highU, other.highU),
        Math.max(highV, other.highV));
  }
}
