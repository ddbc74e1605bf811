package sawstead.solid;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.PrecisionModel;
import org.locationtech.jts.noding.NodedSegmentString;
import org.locationtech.jts.noding.SegmentString;
import org.locationtech.jts.noding.snapround.SnapRoundingNoder;

/**
 * All rings noded on the grid: edges that meet only at their ends, each with the set of rings that
 * run along it an odd number of times. Edges with an empty set part nothing and are dropped.
 */
final class Linework {
  private static final double SCALE = 1 / Slabs.GRID;

  /** Which ring, and which of its circles (or none), a piece of linework comes from. */
  private record Source(int ring, Arc arc) {}

  /** An edge between two vertices, from the lower index to the higher. */
  static final class Edge {
    final int from;
    final int to;
    final BitSet rings = new BitSet();
    private Arc arc;

    Edge(int from, int to) {
      this.from = from;
      this.to = to;
    }
  }

  private final Map<Coordinate, Integer> indices = new HashMap<>();
  private final List<Coordinate> vertices = new ArrayList<>();
  private final Map<Long, Edge> edges = new HashMap<>();

  private Linework() {}

  static Linework noded(List<Ring> rings) {
    List<NodedSegmentString> strings = new ArrayList<>();
    for (int r = 0; r < rings.size(); r++) {
      strings(rings.get(r), r, strings);
    }
    SnapRoundingNoder noder = new SnapRoundingNoder(new PrecisionModel(SCALE));
    noder.computeNodes(strings);
    Linework linework = new Linework();
    for (Object noded : noder.getNodedSubstrings()) {
      linework.add((SegmentString) noded);
    }
    linework.edges.values().removeIf(e -> e.rings.isEmpty());
    return linework;
  }

  /** One string for each straight edge and each run along a circle. */
  private static void strings(Ring ring, int index, List<NodedSegmentString> to) {
    int n = ring.size();
    int first = 0;
    while (first < n && ring.arcOf()[first] >= 0 && same(ring, first, (first + n - 1) % n)) {
      first++;
    }
    first %= n;
    int i = 0;
    while (i < n) {
      List<Coordinate> run = new ArrayList<>();
      int start = (first + i) % n;
      run.add(point(ring, start));
      do {
        i++;
        run.add(point(ring, (first + i) % n));
      } while (i < n && ring.arcOf()[start] >= 0 && same(ring, start, (first + i) % n));
      Arc arc = ring.arcOf()[start] < 0 ? null : ring.arcs().get(ring.arcOf()[start]);
      to.add(new NodedSegmentString(run.toArray(Coordinate[]::new), new Source(index, arc)));
    }
  }

  private static boolean same(Ring ring, int i, int j) {
    return ring.arcOf()[i] == ring.arcOf()[j];
  }

  private static Coordinate point(Ring ring, int i) {
    return new Coordinate(ring.uv()[2 * i], ring.uv()[2 * i + 1]);
  }

  private void add(SegmentString string) {
    Source source = (Source) string.getData();
    for (int i = 0; i + 1 < string.size(); i++) {
      int a = index(string.getCoordinate(i));
      int b = index(string.getCoordinate(i + 1));
      if (a != b) {
        int low = Math.min(a, b);
        int high = Math.max(a, b);
        Edge edge = edges.computeIfAbsent(key(low, high), k -> new Edge(low, high));
        edge.rings.flip(source.ring);
        edge.arc = source.arc == null ? edge.arc : source.arc;
      }
    }
  }

  private int index(Coordinate at) {
    Integer known = indices.get(at);
    if (known == null) {
      // Adding zero turns a negative zero into zero, so that equal points are equal keys.
      Coordinate fresh = new Coordinate(at.x + 0.0, at.y + 0.0);
      known = indices.computeIfAbsent(fresh, k -> vertices.size());
      if (known == vertices.size()) {
        vertices.add(fresh);
      }
    }
    return known;
  }

  /** Index of a point that is a vertex. */
  int indexOf(Coordinate at) {
    return indices.get(at);
  }

  List<Coordinate> vertices() {
    return vertices;
  }

  Iterable<Edge> edges() {
    return edges.values();
  }

  Edge edge(int a, int b) {
    return edges.get(key(Math.min(a, b), Math.max(a, b)));
  }

  /**
   * For each level, the area between true arcs and the edges that stand for them. About the
   * circle's centre, an edge from P to Q bounds (P x Q) / 2 and its arc r^2 theta / 2 to its left.
   */
  double[] arcGain(Cells cells, List<BitSet> columns, int levels) {
    double[] gain = new double[levels];
    for (Edge edge : edges.values()) {
      if (edge.arc != null) {
        double area = beyondChord(edge);
        addGain(gain, area, cells.left(edge), columns);
        addGain(gain, -area, cells.right(edge), columns);
      }
    }
    return gain;
  }

  private static void addGain(double[] gain, double area, int cell, List<BitSet> columns) {
    if (cell >= 0) {
      columns.get(cell).stream().forEach(level -> gain[level] += area);
    }
  }

  private double beyondChord(Edge edge) {
    double pu = vertices.get(edge.from).x - edge.arc.centreU();
    double pv = vertices.get(edge.from).y - edge.arc.centreV();
    double qu = vertices.get(edge.to).x - edge.arc.centreU();
    double qv = vertices.get(edge.to).y - edge.arc.centreV();
    double cross = pu * qv - pv * qu;
    double angle = Math.atan2(cross, pu * qu + pv * qv);
    return (edge.arc.radius() * edge.arc.radius() * angle - cross) / 2;
  }

  private static long key(int low, int high) {
    return ((long) low << 32) | high;
  }
}
