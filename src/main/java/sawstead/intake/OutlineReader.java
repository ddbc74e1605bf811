package sawstead.intake;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.valid.IsValidOp;
import org.locationtech.jts.operation.valid.TopologyValidationError;
import sawstead.brief.Point;
import sawstead.measure.Measured;

/**
 * Reads the {@code outline} of a panel or cut, and refuses one that encloses nothing or crosses
 * itself.
 */
final class OutlineReader {

  private static final GeometryFactory FACTORY = new GeometryFactory();

  /** An area below this is a line, mm2. */
  private static final double LEAST_AREA = 1e-3;

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
    Polygon polygon = polygon(corners);
    if (polygon.getArea() < LEAST_AREA && polygon.isValid()) {
      section.problem("outline", "the outline encloses nothing", "write its corners in order");
      return;
    }
    TopologyValidationError error = new IsValidOp(polygon).getValidationError();
    if (error != null) {
      Coordinate at = error.getCoordinate();
      section.problem(
          "outline",
          "the outline crosses or touches itself"
              + (at == null
                  ? ""
                  : " at [" + words(section, at.x) + ", " + words(section, at.y) + "]"),
          "write its corners in order, one way round, each once");
    }
  }

  private static Polygon polygon(List<Point> corners) {
    Coordinate[] ring = new Coordinate[corners.size() + 1];
    for (int i = 0; i < ring.length; i++) {
      Point corner = corners.get(i % corners.size());
      ring[i] = new Coordinate(corner.u(), corner.v());
    }
    return FACTORY.createPolygon(ring);
  }

  private static String words(Section section, double length) {
    return section.reading().inWords(length);
  }
}
