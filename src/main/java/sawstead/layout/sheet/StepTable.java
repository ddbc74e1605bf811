package sawstead.layout.sheet;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import sawstead.drawing.page.Ink;
import sawstead.drawing.page.Paper;
import sawstead.layout.shop.CutPiece;
import sawstead.layout.shop.ShopStep;

/** Cuts as rows with a box to tick, under a heading for each setting. */
final class StepTable {
  /** A cut, or the heading above cuts of one tool with what to mind at them. */
  private record Row(ShopStep step, boolean heading) {
    double share() {
      return heading ? 1.7 : 1;
    }
  }

  private static final double ROOMY = 13;
  private static final double TIGHT = 9.4;

  private final StepWords words;
  private final List<Row> rows = new ArrayList<>();
  private int next;
  private String setting = "";

  StepTable(StepWords words, List<ShopStep> steps) {
    this.words = words;
    String above = "";
    for (ShopStep step : steps) {
      String now = words.tool(step) + words.safety(step);
      if (!now.equals(above)) {
        rows.add(new Row(step, true));
        above = now;
      }
      rows.add(new Row(step, false));
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
      double need = row.share() * pitch + (row.heading() ? 2 * pitch : 0);
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
    ShopStep step = row.step();
    if (row.heading()) {
      paper.line(left, y - 2.4, right, y - 2.4, 0.6, Ink.INK);
      double x = paper.text(words.tool(step), left, y, size + 1, true, Ink.INK) + 10;
      paper.polygon(new double[] {x, y - 0.4, x + 6.4, y - 0.4, x + 3.2, y + 5.2}, Ink.VERMILION);
      String mind = paper.face(false).within(words.safety(step), size - 0.4, right - x - 10);
      paper.text(mind, x + 10, y, size - 0.4, false, Ink.VERMILION);
      return;
    }
    paper.edge(left + 1, y - 1, 6.5, 6.5, 0.7, 0, Ink.INK);
    Tag.draw(paper, step.cut().guide(), step.cut().order(), left + 19, y + 2.4);
    double from = left + 29;
    double middle = left + (right - left) * (step.isMarked() ? 0.48 : 0.56);
    if (!step.isMarked()) {
      boolean again = words.setting(step).equals(setting);
      Ink ink = again ? Ink.FAINT : GuideInk.of(step.cut().guide());
      String at = again ? "same setting" : words.setting(step);
      paper.text(paper.face(!again).within(at, size, 148), from, y, size, !again, ink);
      from += 152;
    }
    setting = words.setting(step);
    String how = paper.face(false).within(words.how(step), size, middle - from - 5);
    paper.text(how, from, y, size, false, Ink.INK);
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
