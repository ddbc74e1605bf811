package sawstead.drawing.dxf;

/**
 * Axis-parallel bounds in the drawing's plane, mm.
 *
 * @param lowU least u
 * @param lowV least v
 * @param highU greatest u
 * @param highV greatest v
 */
public record Extents(double lowU, double lowV, double highU, double highV) {
  /** The bounds of two opposite corners, in any order. */
  public static Extents of(double fromU, double fromV, double toU, double toV) {
    return new Extents(
        Math.min(fromU, toU), Math.min(fromV, toV), Math.max(fromU, toU), Math.max(fromV, toV));
  }

  /** The least bounds around both. */
  public Extents with(Extents other) {
    return new Extents(
        Math.min(lowU, other.lowU),
        Math.min(lowV, other.lowV),
        Math.max(highU, other.highU),
        Math.max(highV, other.highV));
  }
}
