package sawstead.layout.sheet;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import sawstead.layout.shop.CutPiece;
import sawstead.layout.shop.ShopStep;

/** Cuts as rows with a box to tick, under a heading for each setting. */
final class StepTable {
  /** A row, heading or line of safety. */
  private record Row(ShopStep step, String heading, String safety) {
    double share() {
      return step != null ? 1 : heading != null ? 1.5 : 1.0;
    }
  }

  private static final double ROOMY = 13;
  private static final double TIGHT = 9.4;

  private final StepWords words;
  private final List<Row> rows = new ArrayList<>();
  private int next;

  StepTable(StepWords words, List<ShopStep> steps) {
    this.words = words;
    String heading = "";
    String safety = "";
    for (ShopStep step : steps) {
      String now = words.heading(step);
      if (!now.equals(heading)) {
        rows.add(new Row(null, now, null));
        heading = now;
        if (!words.safety(step).equals(safety)) {
          safety = words.safety(step);
          rows.add(new Row(null, null, safety));
        }
      }
      rows.add(new Row(step, null, null));
    }
  }

  /** Whether all rows have been drawn. */
  boolean isDone() {
    return next >= rows.size();
  }

  /** Draws as many rows as there is room for, from the top down. */
  void draw(Paper paper, double top, double bottom) throws IOException {
    double shares = rows.subList(next, rows.size()).stream().mapToDouble(Row::share).sum();
    double pitch = Math.max(TIGHT, Math.min(ROOMY, (top - bottom) / shares));
    double size = Math.min(8.6, pitch * 0.76);
    double y = top;
    while (!isDone()) {
      Row row = rows.get(next);
      double need = row.share() * pitch + (row.heading() != null ? 2 * pitch : 0);
      if (y - need < bottom - 0.01) {
        return;
      }
      y -= row.share() * pitch;
      draw(paper, row, y, size);
      next++;
    }
  }

  private void draw(Paper paper, Row row, double y, double size) throws IOException {
    double left = Paper.MARGIN;
    double right = paper.width() - Paper.MARGIN;
    if (row.heading() != null) {
      paper.line(left, y - 2.4, right, y - 2.4, 0.6, Ink.INK);
      paper.text(row.heading(), left, y, size + 1, true, Ink.INK);
      return;
    }
    if (row.safety() != null) {
      String line = paper.face(false).within(row.safety(), size - 0.6, right - left - 10);
      paper.polygon(
          new double[] {left, y - 0.6, left + 6.4, y - 0.6, left + 3.2, y + 5}, Ink.VERMILION);
      paper.text(line, left + 10, y, size - 0.6, false, Ink.VERMILION);
      return;
    }
    ShopStep step = row.step();
    paper.edge(left + 1, y - 1, 6.5, 6.5, 0.7, 0, Ink.INK);
    Tag.draw(paper, step.cut().guide(), step.cut().order(), left + 19, y + 2.4);
    double middle = left + (right - left) * 0.44;
    String how = paper.face(false).within(words.how(step), size, middle - left - 34);
    paper.text(how, left + 29, y, size, false, Ink.INK);
    comesOff(paper, step, middle, right, y, size);
  }

  private void comesOff(
      Paper paper, ShopStep step, double from, double right, double y, double size)
      throws IOException {
    List<CutPiece> pieces = words.comesOff(step);
    arrow(paper, from, y + size * 0.3);
    double x = from + 14;
    if (pieces.isEmpty()) {
      paper.text("trimmed", x, y, size, false, Ink.FAINT);
    }
    for (int i = 0; i < pieces.size(); i++) {
      CutPiece piece = pieces.get(i);
      boolean part = piece.kind() == CutPiece.Kind.PART;
      String name = piece.words();
      String length = part ? "  " + words.size(piece) : "";
      double room = right - x;
      x = paper.text(paper.face(part).within(name, size, room), x, y, size, part, Ink.INK);
      if (part && x + 20 < right) {
        String shown = paper.face(false).within(length, size, right - x);
        x = paper.text(shown, x, y, size, false, Ink.FAINT);
      }
      if (i + 1 < pieces.size()) {
        x = paper.text("   and   ", x, y, size, false, Ink.FAINT);
      }
    }
  }

  private static void arrow(Paper paper, double x, double y) throws IOException {
    paper.line(x, y, x + 8, y, 0.7, Ink.FAINT);
    paper.polygon(new double[] {x + 10, y, x + 6, y + 2, x + 6, y - 2}, Ink.FAINT);
  }
}
