package sawstead.layout.sheet;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import sawstead.drawing.page.Booklet;
import sawstead.drawing.page.Ink;
import sawstead.drawing.page.Paper;
import sawstead.layout.Board;
import sawstead.layout.Guide;
import sawstead.layout.shop.Breakdown;

/** The page of one sheet: drawing, what the shapes mean, cuts in order. */
final class SheetPage {
  /** Greatest height of the drawing, points. */
  private static final double HIGHEST = 330;

  private final Booklet book;
  private final Breakdown breakdown;
  private final StepWords words;

  SheetPage(Booklet book, Breakdown breakdown) {
    this.book = book;
    this.breakdown = breakdown;
    this.words = new StepWords(breakdown);
  }

  void draw(int number) throws IOException {
    SheetScene scene = SheetScene.of(breakdown, number);
    StepTable table = new StepTable(words, breakdown.steps(number));
    boolean first = true;
    while (first || !table.isDone()) {
      try (Paper paper = book.page()) {
        double top = title(paper, scene, first);
        if (first) {
          top = figure(paper, scene, top);
        }
        table.draw(paper, top, Paper.MARGIN + 14);
        book.foot(paper);
      }
      first = false;
    }
  }

  private double title(Paper paper, SheetScene scene, boolean first) throws IOException {
    Board board = breakdown.board(scene.stock());
    double y = paper.height() - Paper.MARGIN - 14;
    String name =
        "Sheet "
            + scene.number()
            + " of "
            + breakdown.plan().sheets().size()
            + (first ? "" : ", continued");
    double x = paper.text(name, Paper.MARGIN, y, 17, true, Ink.INK);
    double mass = board.mass(scene.length(), scene.width());
    String what =
        scene.stock()
            + ", "
            + words.both(board.thickness())
            + ", "
            + breakdown.words().mass(mass)
            + (mass > 23 && !breakdown.isCutBySeller(scene.number())
                ? ": two people carry it"
                : "");
    paper.text(what, x + 12, y, 9.5, false, Ink.FAINT);
    if (breakdown.forbidden()) {
      y -= 14;
      paper.text(
          "STOP: do not cut. The station has findings that forbid it: run check first.",
          Paper.MARGIN,
          y,
          10,
          true,
          Ink.VERMILION);
    }
    return y - 10;
  }

  private double figure(Paper paper, SheetScene scene, double top) throws IOException {
    double left = Paper.MARGIN + 14;
    double room = paper.width() - Paper.MARGIN - left;
    double scale = Math.min(room / scene.length(), HIGHEST / scene.width());
    double bottom = top - 14 - scene.width() * scale;
    List<String> told =
        new SheetFigure(
                paper, scene, breakdown.words(), left, bottom, scale, SheetFigure.Numbers.ALL)
            .draw();
    double y = legend(paper, scene, bottom - 28);
    for (String line : columns(told)) {
      y -= 9.5;
      paper.text(
          paper.face(false).within(line, 7.4, paper.width() - 2 * Paper.MARGIN),
          Paper.MARGIN,
          y,
          7.4,
          false,
          Ink.INK);
    }
    return y - 6;
  }

  private static List<String> columns(List<String> told) {
    List<String> lines = new ArrayList<>();
    for (int i = 0; i < told.size(); i += 3) {
      lines.add(String.join("      ", told.subList(i, Math.min(i + 3, told.size()))));
    }
    return lines;
  }

  private double legend(Paper paper, SheetScene scene, double y) throws IOException {
    double x = Paper.MARGIN;
    String sheet = Integer.toString(scene.number());
    for (Guide guide : Tag.legend(breakdown)) {
      Tag.draw(paper, guide, 1, x + 6, y + 2.6);
      String says =
          switch (guide) {
            case FENCE -> "fence";
            case SLED -> "sled";
            case SELLER -> "at the seller's";
            case RAIL, PACKED_RAIL -> "guided saw";
          };
      x = paper.text(says, x + 15, y, 8, false, Ink.INK) + 12;
    }
    paper.text(
        "Measure from the marked corner. Pencil "
            + sheet
            + "a, "
            + sheet
            + "b ... and every name on its piece as it comes off.",
        x,
        y,
        8,
        false,
        Ink.FAINT);
    return y;
  }
}
