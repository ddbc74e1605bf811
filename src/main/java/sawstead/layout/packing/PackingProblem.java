package sawstead.layout.packing;

import java.util.List;

/**
 * Rectangles to be cut from sheets by cuts that run from edge to edge and have no width.
 *
 * <p>A blade of width k is brought in by the caller, who makes every piece and every sheet longer
 * and wider by k: pieces fit side by side when the sum of (w + k) is at most W + k, at every level
 * of cutting, so the two problems have the same answers.
 *
 * @param sheets the sizes to cut from, at least one
 * @param pieces the sizes to be cut, at least one; each fits at least one of the sheets
 */
public record PackingProblem(List<SheetKind> sheets, List<PieceKind> pieces) {
  public PackingProblem {
    sheets = List.copyOf(sheets);
    pieces = List.copyOf(pieces);
    if (sheets.isEmpty() || pieces.isEmpty()) {
      throw new IllegalArgumentException("a packing problem needs sheets and pieces");
    }
    if (!possible(sheets, pieces)) {
      throw new IllegalArgumentException("a piece fits none of the sheets");
    }
  }

  /** Whether each piece fits some sheet of which there is at least one. */
  public static boolean possible(List<SheetKind> sheets, List<PieceKind> pieces) {
    return pieces.stream()
        .allMatch(piece -> sheets.stream().anyMatch(s -> s.supply() > 0 && piece.fits(s)));
  }

  /** Total area of all copies, in square steps. */
  long pieceArea() {
    long sum = 0;
    for (PieceKind piece : pieces) {
      sum += piece.area() * piece.demand();
    }
    return sum;
  }
}
