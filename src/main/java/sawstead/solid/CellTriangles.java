package sawstead.solid;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.triangulate.polygon.PolygonTriangulator;
import org.locationtech.jts.triangulate.tri.Tri;

/**
 * Triangulates every cell with material once, all vertices on its border kept, in-line ones too.
 */
final class CellTriangles {
  private CellTriangles() {}

  static Plan plan(Linework linework, Cells cells, List<BitSet> columns) {
    List<BitSet> of = new ArrayList<>();
    int[] triangles = new int[96];
    int n = 0;
    for (int cell = 0; cell < columns.size(); cell++) {
      if (columns.get(cell).isEmpty()) {
        continue;
      }
      Polygon polygon = cells.polygon(cell);
      List<Tri> tris = new PolygonTriangulator(polygon).getTriangles();
      demandComplete(polygon, tris.size());
      for (Tri tri : tris) {
        if (n + 3 > triangles.length) {
          triangles = Arrays.copyOf(triangles, 2 * triangles.length);
        }
        // The triangulator's corners run clockwise.
        for (int k = 2; k >= 0; k--) {
          triangles[n++] = linework.indexOf(tri.getCoordinate(k));
        }
        of.add(columns.get(cell));
      }
    }
    double[] uv = new double[2 * linework.vertices().size()];
    for (int i = 0; i < linework.vertices().size(); i++) {
      uv[2 * i] = linework.vertices().get(i).x;
      uv[2 * i + 1] = linework.vertices().get(i).y;
    }
    return Plan.of(uv, Arrays.copyOf(triangles, n), of);
  }

  /** A polygon with n corners and h holes has n + 2 h - 2 triangles if no corner is left out. */
  private static void demandComplete(Polygon polygon, int found) {
    int rings = 1 + polygon.getNumInteriorRing();
    int corners = polygon.getNumPoints() - rings;
    if (found != corners + 2 * (rings - 1) - 2) {
      throw new IllegalStateException(
          "a cell with " + corners + " corners was cut into " + found + " triangles");
    }
  }
}
