package sawstead.layout.sheet;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import sawstead.check.Words;
import sawstead.drawing.page.Ink;
import sawstead.drawing.page.Paper;
import sawstead.layout.Tool;

/**
 * A sheet to scale on a page: panels with name and size, offcuts, every kerf with the number of its
 * cut. A panel too small for its name gets a letter, told below the figure.
 */
final class SheetFigure {
  private static final double LARGEST = 9.5;
  private static final double SMALLEST = 4.6;

  /** A kerf narrower than this on paper would not be seen, points. */
  private static final double THINNEST = 0.9;

  /** Places tried for a number along its cut. */
  private static final int PLACES = 48;

  private final Paper paper;
  private final SheetScene scene;
  private final Words words;
  private final double left;
  private final double bottom;
  private final double scale;
  private final Numbers numbers;
  private final List<String> told = new ArrayList<>();
  private final List<double[]> tags = new ArrayList<>();

  /** What names and sizes cover: left, bottom, right, top. */
  private final List<double[]> written = new ArrayList<>();

  /** Which cuts bear their number. */
  enum Numbers {
    /** All of them. */
    ALL(Tag.HALF),
    /** Only those along the rail, small: for a small figure. */
    RAIL(3.9);

    private final double half;

    Numbers(double half) {
      this.half = half;
    }
  }

  /**
   * A figure.
   *
   * @param left of the sheet on the page, points
   * @param bottom of the sheet on the page, points
   * @param scale points for a millimetre
   * @param numbers which cuts bear theirs
   */
  SheetFigure(
      Paper paper,
      SheetScene scene,
      Words words,
      double left,
      double bottom,
      double scale,
      Numbers numbers) {
    this.paper = paper;
    this.scene = scene;
    this.words = words;
    this.left = left;
    this.bottom = bottom;
    this.scale = scale;
    this.numbers = numbers;
  }

  /** Draws it; returns what is told below, one line for each panel that only got a letter. */
  List<String> draw() throws IOException {
    double length = scene.length() * scale;
    double width = scene.width() * scale;
    paper.fill(left, bottom, length, width, Ink.DUST);
    for (Shape.Rest rest : scene.rests()) {
      rest(rest);
    }
    for (Shape.Flaw flaw : scene.flaws()) {
      flaw(flaw);
    }
    for (Shape.Panel panel : scene.panels()) {
      paper.fill(x(panel), y(panel), l(panel), w(panel), Ink.BIRCH);
    }
    for (Shape.Kerf kerf : scene.kerfs()) {
      double thin = Math.max(THINNEST, kerf.alongLength() ? w(kerf) : l(kerf));
      paper.fill(
          x(kerf),
          y(kerf),
          kerf.alongLength() ? l(kerf) : thin,
          kerf.alongLength() ? thin : w(kerf),
          GuideInk.of(kerf.guide()));
    }
    paper.edge(left, bottom, length, width, 1.1, 0, Ink.INK);
    for (Shape.Panel panel : scene.panels()) {
      name(panel);
    }
    for (Shape.Kerf kerf : scene.kerfs()) {
      if (numbers == Numbers.ALL || kerf.guide().tool() != Tool.TABLE) {
        tag(kerf);
      }
    }
    around(length, width);
    return told;
  }

  private void rest(Shape.Rest rest) throws IOException {
    paper.fill(x(rest), y(rest), l(rest), w(rest), Ink.LICHEN);
    paper.edge(x(rest), y(rest), l(rest), w(rest), 0.6, 3, Ink.FAINT);
    String size = words.length(rest.length()) + " x " + words.length(rest.width());
    fit(rest, List.of("offcut, keep", size), Ink.FAINT, false);
  }

  /** Crossed out, so that it is seen without colour. */
  private void flaw(Shape.Flaw flaw) throws IOException {
    double right = x(flaw) + l(flaw);
    double top = y(flaw) + w(flaw);
    paper.edge(x(flaw), y(flaw), l(flaw), w(flaw), 0.8, 0, Ink.VERMILION);
    paper.line(x(flaw), y(flaw), right, top, 0.6, Ink.VERMILION);
    paper.line(x(flaw), top, right, y(flaw), 0.6, Ink.VERMILION);
  }

  private void name(Shape.Panel panel) throws IOException {
    String size = words.length(panel.length()) + " x " + words.length(panel.width());
    if (fit(panel, List.of(panel.name(), size), Ink.INK, true)
        || fit(panel, List.of(panel.name()), Ink.INK, true)) {
      return;
    }
    String letter = Character.toString('A' + told.size() % 26) + "'".repeat(told.size() / 26);
    told.add(letter + "  " + panel.name() + ", " + size);
    double width = paper.face(true).width(letter, 6);
    paper.text(letter, middleX(panel) - width / 2, middleY(panel) - 2.2, 6, true, Ink.INK);
  }

  /** Writes lines in the middle of a shape, level or upwards, if they fit; the first is heavy. */
  private boolean fit(Shape shape, List<String> lines, Ink ink, boolean heavy) throws IOException {
    double level = size(lines, l(shape), w(shape), heavy);
    double upright = size(lines, w(shape), l(shape), heavy);
    double size = Math.max(level, upright);
    if (size < SMALLEST) {
      return false;
    }
    boolean up = upright > level * 1.25;
    size = up ? upright : level;
    double pitch = size * 1.25;
    double first = (lines.size() - 1) * pitch / 2 - size * 0.35;
    for (int i = 0; i < lines.size(); i++) {
      boolean bold = heavy && i == 0;
      double own = i == 0 ? size : size * 0.85;
      double half = paper.face(bold).width(lines.get(i), own) / 2;
      double off = first - i * pitch;
      written.add(
          up
              ? box(middleX(shape) - off - own * 0.8, middleY(shape) - half, own, 2 * half)
              : box(middleX(shape) - half, middleY(shape) + off, 2 * half, own));
      if (up) {
        paper.textUpwards(
            lines.get(i), middleX(shape) - off, middleY(shape) - half, own, bold, ink);
      } else {
        paper.text(lines.get(i), middleX(shape) - half, middleY(shape) + off, own, bold, ink);
      }
    }
    return true;
  }

  /** The largest size in which the lines fit a room, points. */
  private double size(List<String> lines, double run, double room, boolean heavy)
      throws IOException {
    double widest = 0;
    for (int i = 0; i < lines.size(); i++) {
      double width = paper.face(heavy && i == 0).width(lines.get(i), i == 0 ? 1 : 0.85);
      widest = Math.max(widest, width);
    }
    double byRun = (run - 6) / widest;
    double byRoom = (room - 2) / (1.25 * lines.size());
    return Math.min(LARGEST, Math.min(byRun, byRoom));
  }

  private static double[] box(double x, double y, double width, double height) {
    return new double[] {x, y, x + width, y + height};
  }

  /** The number of a cut on its line, where it hides least: no other number, then no words. */
  private void tag(Shape.Kerf kerf) throws IOException {
    double run = kerf.alongLength() ? l(kerf) : w(kerf);
    double[] best = null;
    double least = Double.MAX_VALUE;
    for (int i = 0; i <= PLACES; i++) {
      // From both ends inwards: a number is looked for where the cut begins or ends.
      double share = i % 2 == 0 ? 0.5 * i / PLACES : 1 - 0.5 * i / PLACES;
      double along =
          Math.min(Math.max(run * share, numbers.half + 1), Math.max(run - numbers.half, 0));
      double tagX = x(kerf) + (kerf.alongLength() ? along : l(kerf) / 2);
      double tagY = y(kerf) + (kerf.alongLength() ? w(kerf) / 2 : along);
      double hides = hides(tagX, tagY);
      if (hides < least - 1e-9) {
        least = hides;
        best = new double[] {tagX, tagY};
      }
    }
    tags.add(best);
    Tag.draw(paper, kerf.guide(), kerf.order(), best[0], best[1], numbers.half);
  }

  /** How much a number there would hide; a number counts for ten words. */
  private double hides(double x, double y) {
    double hides = 0;
    for (double[] tag : tags) {
      hides += 10 * Math.max(0, 2.5 * numbers.half - Math.hypot(tag[0] - x, tag[1] - y));
    }
    for (double[] box : written) {
      double across = Math.max(0, Math.max(box[0] - x, x - box[2]));
      double up = Math.max(0, Math.max(box[1] - y, y - box[3]));
      hides += Math.max(0, 1.2 * numbers.half - Math.hypot(across, up));
    }
    return hides;
  }

  /** Size of the sheet, grain and the corner to measure from. */
  private void around(double length, double width) throws IOException {
    String along = words.length(scene.length());
    double half = paper.face(false).width(along, 8) / 2;
    double below = bottom - 14;
    paper.text(along, left + length / 2 - half, below, 8, false, Ink.INK);
    paper.line(left, below + 3, left + length / 2 - half - 5, below + 3, 0.5, Ink.FAINT);
    paper.line(left + length / 2 + half + 5, below + 3, left + length, below + 3, 0.5, Ink.FAINT);
    paper.line(left, below, left, below + 6, 0.5, Ink.FAINT);
    paper.line(left + length, below, left + length, below + 6, 0.5, Ink.FAINT);
    String across = words.length(scene.width());
    double high = paper.face(false).width(across, 8);
    paper.textUpwards(across, left - 6, bottom + width / 2 - high / 2, 8, false, Ink.INK);
    double arrow = left + length - 70;
    double above = bottom + width + 6;
    double from = paper.text("grain", arrow, above, 7.5, false, Ink.FAINT) + 4;
    paper.line(from, above + 2.6, left + length, above + 2.6, 0.8, Ink.FAINT);
    double tip = left + length;
    paper.polygon(
        new double[] {tip, above + 2.6, tip - 6, above + 5, tip - 6, above + 0.2}, Ink.FAINT);
    paper.polygon(
        new double[] {left - 1, bottom - 1, left - 9, bottom - 3, left - 3, bottom - 9}, Ink.INK);
  }

  private double x(Shape shape) {
    return left + shape.x() * scale;
  }

  private double y(Shape shape) {
    return bottom + shape.y() * scale;
  }

  private double l(Shape shape) {
    return shape.length() * scale;
  }

  private double w(Shape shape) {
    return shape.width() * scale;
  }

  private double middleX(Shape shape) {
    return x(shape) + l(shape) / 2;
  }

  private double middleY(Shape shape) {
    return y(shape) + w(shape) / 2;
  }
}
