package sawstead.layout.shop;

/**
 * What lies on one side of a cut.
 *
 * @param kind what becomes of it
 * @param name of the part, or of the piece still to be cut ({@code 1b}); else empty
 * @param x corner nearest the sheet's origin along the length, mm
 * @param y the same along the width, mm
 * @param length extent along the sheet's length, mm
 * @param width extent along the sheet's width, mm
 */
public record CutPiece(Kind kind, String name, double x, double y, double length, double width) {
  /** What becomes of a piece. */
  public enum Kind {
    /** A finished panel. */
    PART,
    /** Cut again later. */
    WORK,
    /** Worth keeping. */
    OFFCUT,
    /** Not worth keeping, or turned to dust. */
    WASTE
  }

  /** In words: a name, {@code offcut} or {@code waste}. */
  public String words() {
    return switch (kind) {
      case PART, WORK -> name;
      case OFFCUT -> "offcut";
      case WASTE -> "waste";
    };
  }
}
