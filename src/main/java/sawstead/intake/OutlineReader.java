package sawstead.intake;

import java.util.ArrayList;
import java.util.List;
import sawstead.brief.Point;
import sawstead.measure.Measured;
import sawstead.solid.Corner;
import sawstead.solid.Outline;
import sawstead.solid.OutlineException;

/**
 * Reads the {@code outline} of a panel or cut, and refuses one that encloses nothing or crosses
 * itself.
 */
final class OutlineReader {

  private OutlineReader() {}

  /** The corners; if they are no outline, the problem has been noted. */
  static List<Point> outline(Section section) {
    List<Point> corners = new ArrayList<>();
    for (List<Measured> row : section.rows("outline", 2)) {
      corners.add(new Point(row.get(0).nominal(), row.get(1).nominal()));
    }
    if (corners.size() > 3 && corners.get(0).equals(corners.get(corners.size() - 1))) {
      corners.remove(corners.size() - 1);
    }
    if (!section.isBad("outline")) {
      refuseCrossing(section, corners);
    }
    return corners;
  }

  private static void refuseCrossing(Section section, List<Point> corners) {
    if (corners.size() < 3) {
      section.problem(
          "outline",
          "the outline has " + corners.size() + " corners",
          "write at least three, such as [[0, 0], [600, 0], [600, 300]]");
      return;
    }
    try {
      Outline.polygon(corners.stream().map(c -> Corner.of(c.u(), c.v())).toList());
    } catch (OutlineException e) {
      section.problem(
          "outline",
          e.crossing()
              .map(at -> "the outline crosses or touches itself at " + words(section, at))
              .orElse("the outline encloses nothing"),
          e.crossing().isPresent()
              ? "write its corners in order, one way round, each once"
              : "write its corners in order");
    }
  }

  private static String words(Section section, double[] at) {
    return "[" + section.reading().inWords(at[0]) + ", " + section.reading().inWords(at[1]) + "]";
  }
}
