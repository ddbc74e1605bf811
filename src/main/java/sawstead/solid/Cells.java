package sawstead.solid;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.polygonize.Polygonizer;

/**
 * The cells that linework cuts the plane into, each with the set of rings it lies in, found by
 * flooding from outside: crossing an edge changes membership of exactly the edge's rings. A point
 * test against the rings as they were before snapping would disagree with the snapped linework.
 */
final class Cells {
  private static final GeometryFactory JTS = new GeometryFactory();
  private static final int OUTSIDE = -1;

  private final List<Polygon> polygons = new ArrayList<>();
  private final Map<Linework.Edge, int[]> sides = new LinkedHashMap<>();
  private final List<List<Linework.Edge>> borders = new ArrayList<>();
  private BitSet[] inside;

  private Cells() {}

  static Cells of(Linework linework) {
    Polygonizer polygonizer = new Polygonizer();
    for (Linework.Edge edge : linework.edges()) {
      Coordinate a = linework.vertices().get(edge.from);
      Coordinate b = linework.vertices().get(edge.to);
      polygonizer.add(JTS.createLineString(new Coordinate[] {a, b}));
    }
    Cells cells = new Cells();
    for (Polygon polygon : inOneOrder(polygonizer.getPolygons())) {
      cells.add(polygon, linework);
    }
    cells.flood();
    return cells;
  }

  /** The polygonizer keeps hash sets: without an order of our own, no two runs give one mesh. */
  private static List<Polygon> inOneOrder(Iterable<?> polygons) {
    List<Polygon> sorted = new ArrayList<>();
    for (Object polygon : polygons) {
      sorted.add((Polygon) ((Polygon) polygon).norm());
    }
    sorted.sort(Polygon::compareTo);
    return sorted;
  }

  private void add(Polygon polygon, Linework linework) {
    int cell = polygons.size();
    polygons.add(polygon);
    borders.add(new ArrayList<>());
    border(polygon.getExteriorRing(), true, cell, linework);
    for (int i = 0; i < polygon.getNumInteriorRing(); i++) {
      border(polygon.getInteriorRingN(i), false, cell, linework);
    }
  }

  private void border(LinearRing ring, boolean shell, int cell, Linework linework) {
    Coordinate[] points = ring.getCoordinates();
    boolean leftOfRun = Orientation.isCCW(points) == shell;
    for (int i = 0; i + 1 < points.length; i++) {
      int a = linework.indexOf(points[i]);
      int b = linework.indexOf(points[i + 1]);
      Linework.Edge edge = linework.edge(a, b);
      boolean left = (a == edge.from) == leftOfRun;
      sides.computeIfAbsent(edge, e -> new int[] {OUTSIDE, OUTSIDE})[left ? 0 : 1] = cell;
      borders.get(cell).add(edge);
    }
  }

  private void flood() {
    inside = new BitSet[polygons.size()];
    ArrayDeque<Integer> queue = new ArrayDeque<>();
    for (Map.Entry<Linework.Edge, int[]> entry : sides.entrySet()) {
      int[] side = entry.getValue();
      if (side[0] == OUTSIDE || side[1] == OUTSIDE) {
        reach(Math.max(side[0], side[1]), (BitSet) entry.getKey().rings.clone(), queue);
      }
    }
    while (!queue.isEmpty()) {
      int cell = queue.remove();
      for (Linework.Edge edge : borders.get(cell)) {
        int[] side = sides.get(edge);
        int other = side[0] == cell ? side[1] : side[0];
        if (other != OUTSIDE) {
          BitSet set = (BitSet) inside[cell].clone();
          set.xor(edge.rings);
          reach(other, set, queue);
        }
      }
    }
  }

  private void reach(int cell, BitSet set, ArrayDeque<Integer> queue) {
    if (inside[cell] == null) {
      inside[cell] = set;
      queue.add(cell);
    } else if (!inside[cell].equals(set)) {
      throw new IllegalStateException("two ways into a cell disagree: its linework is not closed");
    }
  }

  /** For each cell the rings it lies in. */
  List<BitSet> inside() {
    return Arrays.asList(inside);
  }

  Polygon polygon(int cell) {
    return polygons.get(cell);
  }

  /** The cell left of an edge, looking from its lower vertex to its higher, or -1 outside. */
  int left(Linework.Edge edge) {
    return sides.get(edge)[0];
  }

  /** The cell right of an edge, or -1 outside. */
  int right(Linework.Edge edge) {
    return sides.get(edge)[1];
  }
}
