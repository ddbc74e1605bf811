package sawstead.solid;

import java.util.BitSet;
import java.util.List;

/**
 * A solid as triangular columns cut into levels.
 *
 * @param heights between the levels, ascending, mm
 * @param plan triangulation and columns
 * @param arcGain for each level, the area by which true arcs exceed their polygons, mm2
 */
record Slabs(double[] heights, Plan plan, double[] arcGain) {
  /** Step of the grid that all coordinates of a solid in its own frame lie on: 2^-20 mm. */
  static final double GRID = 1.0 / (1 << 20);

  /** The grid point next to a length, mm. */
  static double snap(double length) {
    // Adding zero turns a negative zero into zero: equal places must be equal keys.
    return Math.rint(length * (1 << 20)) * GRID + 0.0;
  }

  /** Works out the columns; see the package's description for the steps. */
  static Slabs of(List<Prism> prisms) {
    Storeys storeys = new Storeys(prisms);
    boolean square = storeys.rings().stream().allMatch(Ring::isAxisParallel);
    Slabs slabs = square ? GridSlabs.of(storeys) : NodedSlabs.of(storeys);
    if (slabs.plan.size() == 0) {
      throw new SolidException("nothing is left of a panel: its features take away all of it");
    }
    return slabs;
  }

  int levels() {
    return heights.length - 1;
  }

  double height(int level) {
    return heights[level + 1] - heights[level];
  }

  /** Height of material over a triangle, mm. */
  private double height(BitSet column) {
    double sum = 0;
    for (int k = column.nextSetBit(0); k >= 0; k = column.nextSetBit(k + 1)) {
      sum += height(k);
    }
    return sum;
  }

  double volume() {
    double sum = 0;
    for (int t = 0; t < plan.size(); t++) {
      sum += plan.area(t) * height(plan.columns().get(t));
    }
    return sum;
  }

  /** What true arcs add to the volume, mm3. */
  double arcVolume() {
    double sum = 0;
    for (int k = 0; k < levels(); k++) {
      sum += arcGain[k] * height(k);
    }
    return sum;
  }

  Vec centroid() {
    double[] m = new double[4];
    for (int t = 0; t < plan.size(); t++) {
      double u = 0;
      double v = 0;
      for (int k = 0; k < 3; k++) {
        u += plan.u(plan.triangles()[3 * t + k]) / 3;
        v += plan.v(plan.triangles()[3 * t + k]) / 3;
      }
      BitSet column = plan.columns().get(t);
      for (int k = column.nextSetBit(0); k >= 0; k = column.nextSetBit(k + 1)) {
        double volume = plan.area(t) * height(k);
        m[0] += volume;
        m[1] += volume * u;
        m[2] += volume * v;
        m[3] += volume * (heights[k] + heights[k + 1]) / 2;
      }
    }
    return new Vec(m[1] / m[0], m[2] / m[0], m[3] / m[0]);
  }
}
