package sawstead.layout.sheet;

import java.io.IOException;
import java.util.List;
import sawstead.drawing.page.Ink;
import sawstead.drawing.page.Paper;
import sawstead.layout.shop.CutPiece;
import sawstead.layout.shop.ShopStep;

/** The table of cuts in columns, set as large as the room allows. */
final class CutColumns {
  /** Largest distance of two lines, points. */
  private static final double LARGEST = 12.5;

  private static final double GAP = 14;

  /** Height of letters in distances of lines. */
  private static final double LETTER = 0.78;

  /** Room for the box and the number of a cut, and length of an arrow, in sizes of letters. */
  private static final double INDENT = 2.9;

  private static final double ARROW = 1.2;

  private static final String AND = "  +  ";

  /** Weight of a heading, in lines. */
  private static final double HEADING = 1.35;

  private final StepWords words;
  private final List<CutRow> rows;

  CutColumns(StepWords words, List<CutRow> rows) {
    this.words = words;
    this.rows = rows;
  }

  /**
   * In how many columns the letters come out largest.
   *
   * @param height room below the figures, points
   */
  int columns(Paper paper, double height) throws IOException {
    double longest = longest(paper);
    int best = 1;
    for (int n = 2; n <= 4; n++) {
      best = size(paper, n, height, longest) > size(paper, best, height, longest) ? n : best;
    }
    return best;
  }

  /** Size of the letters in so many columns, points: what fits height and width. */
  double size(Paper paper, int columns, double height) throws IOException {
    return size(paper, columns, height, longest(paper));
  }

  private double size(Paper paper, int columns, double height, double longest) {
    return Math.min(LETTER * pitch(columns, height), width(paper, columns) / longest);
  }

  /** Width of the longest line of a cut, in sizes of its letters; 0 where nothing is cut. */
  private double longest(Paper paper) throws IOException {
    double longest = 0;
    for (CutRow row : rows) {
      if (row instanceof CutRow.OfCut cut) {
        longest = Math.max(longest, run(paper, cut.step()));
      }
    }
    return longest;
  }

  private double pitch(int columns, double height) {
    return Math.min(LARGEST, height / Math.ceil(weight() / columns + HEADING + 0.5));
  }

  private static double width(Paper paper, int columns) {
    return (paper.width() - 2 * Paper.MARGIN - (columns - 1) * GAP) / columns;
  }

  private double weight() {
    return rows.stream().mapToDouble(CutColumns::weight).sum();
  }

  private static double weight(CutRow row) {
    return row instanceof CutRow.OfCut ? 1 : HEADING;
  }

  /** Draws all lines below {@code top}. */
  void draw(Paper paper, int columns, double top, double bottom) throws IOException {
    double pitch = pitch(columns, top - bottom);
    double size = size(paper, columns, top - bottom);
    double width = width(paper, columns);
    double each = weight() / columns;
    double y = top;
    double used = 0;
    int column = 0;
    for (CutRow row : rows) {
      // A heading never stands alone at the foot of a column.
      double wants = row instanceof CutRow.OfCut ? 0.5 : HEADING + 0.9;
      if (used + wants > each * (column + 1) && column < columns - 1) {
        column++;
        y = top;
      }
      used += weight(row);
      y -= pitch * weight(row);
      draw(paper, row, Paper.MARGIN + column * (width + GAP), width, y, size);
    }
  }

  private void draw(Paper paper, CutRow row, double x, double width, double y, double size)
      throws IOException {
    if (row instanceof CutRow.OfSheet sheet) {
      heading(paper, sheet.says(), "", Ink.INK, x, width, y, size);
    } else if (row instanceof CutRow.OfSetting setting) {
      paper.edge(x + 0.5, y - 0.6, size * 0.75, size * 0.75, 0.6, 0, Ink.INK);
      String says = setting.number() + ".  " + words.setting(setting.first());
      Ink ink = GuideInk.of(setting.first().cut().guide());
      double in = size * 0.75 + 5;
      heading(paper, says, words.mind(setting.first()), ink, x + in, width - in, y, size);
    } else if (row instanceof CutRow.OfCut cut) {
      cut(paper, cut.step(), x, width, y, size);
    }
  }

  private static void heading(
      Paper paper, String says, String mind, Ink ink, double x, double width, double y, double size)
      throws IOException {
    double at = paper.text(paper.face(true).within(says, size, width), x, y, size, true, ink);
    if (!mind.isEmpty()) {
      paper.text("   " + mind, at, y, size * 0.9, false, Ink.VERMILION);
    }
    paper.line(x, y - size * 0.24, x + width, y - size * 0.24, 0.4, Ink.FAINT);
  }

  private void cut(Paper paper, ShopStep step, double x, double width, double y, double size)
      throws IOException {
    double box = size * 0.72;
    paper.edge(x + 0.5, y - 0.4, box, box, 0.6, 0, Ink.INK);
    double half = size * 0.5;
    Tag.draw(
        paper,
        step.cut().guide(),
        step.cut().order(),
        x + box + 3 + half * 1.4,
        y + size * 0.3,
        half);
    double at = paper.text(how(step), x + INDENT * size, y, size, false, Ink.INK);
    at = arrow(paper, at + 0.4 * size, y + size * 0.3, size) + 0.4 * size;
    List<CutPiece> pieces = words.comesOff(step);
    if (pieces.isEmpty()) {
      paper.text("trimmed", at, y, size, false, Ink.FAINT);
    }
    for (int i = 0; i < pieces.size(); i++) {
      boolean part = pieces.get(i).kind() == CutPiece.Kind.PART;
      at = paper.text(pieces.get(i).words(), at, y, size, part, part ? Ink.INK : Ink.FAINT);
      at = i + 1 < pieces.size() ? paper.text(AND, at, y, size, false, Ink.FAINT) : at;
    }
  }

  private String how(ShopStep step) {
    return step.work().words()
        + words.thenFace(step)
        + (step.isMarked() ? ":  " + words.mark(step) : "");
  }

  /** How far a line runs at a size of one point. */
  private double run(Paper paper, ShopStep step) throws IOException {
    double run = INDENT + ARROW + 0.8 + paper.face(false).width(how(step), 1);
    List<CutPiece> pieces = words.comesOff(step);
    for (CutPiece piece : pieces) {
      boolean part = piece.kind() == CutPiece.Kind.PART;
      run += paper.face(part).width(piece.words(), 1) + paper.face(false).width(AND, 1);
    }
    return run;
  }

  private static double arrow(Paper paper, double x, double y, double size) throws IOException {
    double tip = x + ARROW * size;
    paper.line(x, y, tip - 2, y, 0.6, Ink.FAINT);
    paper.polygon(new double[] {tip, y, tip - 3.4, y + 1.7, tip - 3.4, y - 1.7}, Ink.FAINT);
    return tip;
  }
}
