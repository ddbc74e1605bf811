package sawstead.book;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import sawstead.drawing.page.Ink;
import sawstead.drawing.page.Paper;

/**
 * Words of a page that wrap.
 *
 * @param text without a line break
 * @param size points
 * @param heavy whether in the bold face
 * @param gap free above it, points
 */
record Sentence(String text, double size, boolean heavy, Ink ink, double gap) {
  private static final double PITCH = 1.32;

  static Sentence of(String text) {
    return new Sentence(text, 9, false, Ink.INK, 3);
  }

  static Sentence mind(String text) {
    return new Sentence("Mind: " + text, 9, true, Ink.VERMILION, 3);
  }

  static Sentence title(String text) {
    return new Sentence(text, 12, true, Ink.INK, 0);
  }

  /** How high they all are in a column, points. */
  static double height(List<Sentence> all, Paper paper, double width) throws IOException {
    double height = 0;
    for (Sentence one : all) {
      height += one.gap + one.lines(paper, width).size() * one.pitch();
    }
    return height;
  }

  /** Writes them down a column from its upper edge; returns where they end. */
  static double write(List<Sentence> all, Paper paper, double x, double top, double width)
      throws IOException {
    double y = top;
    for (Sentence one : all) {
      y -= one.gap;
      for (String line : one.lines(paper, width)) {
        y -= one.pitch();
        paper.text(line, x, y, one.size, one.heavy, one.ink);
      }
    }
    return y;
  }

  private double pitch() {
    return size * PITCH;
  }

  private List<String> lines(Paper paper, double width) throws IOException {
    List<String> lines = new ArrayList<>();
    // A number stays with its unit.
    String bound = text.replaceAll("(?<=[0-9]) (?=(in|mm|kg|lb|m)\\b)", "\u00a0");
    for (String line : paper.face(heavy).lines(bound, size, width)) {
      // A path has no spaces at which it could wrap.
      lines.add(paper.face(heavy).within(line, size, width));
    }
    return lines;
  }
}
