package sawstead.solid;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FreeWayTest {
  private static final double TOLERANCE = 0.05;
  private static final Vec RIGHT = new Vec(1, 0, 0);

  private static Body box(String id, double x, double y, double z, double size) {
    return new Body(id, Solids.box(size, size, size), Placement.at(new Vec(x, y, z)));
  }

  private static double way(Body body, Vec direction, Body other) {
    return FreeWay.of(body, direction, other, TOLERANCE, 500);
  }

  @ParameterizedTest
  @CsvSource({
    "150, 50.05",
    "100, 0.05",
    "99.97, 0.02",
    "99.9, 0",
    "-100, Infinity",
    "601, Infinity"
  })
  void of_twoCubes_isTheirDistanceAndTheTolerance(double x, double expected) {
    assertEquals(expected, way(box("a", 0, 0, 0, 100), RIGHT, box("b", x, 0, 0, 100)), 1e-9);
  }

  @ParameterizedTest
  @CsvSource({"99.9, 50.05", "99.96, Infinity", "100, Infinity", "120, Infinity"})
  void of_aCubeThatPassesBeside_meetsOnlyWhatIsInTheWay(double y, double expected) {
    assertEquals(expected, way(box("a", 0, 0, 0, 100), RIGHT, box("b", 150, y, 0, 100)), 1e-9);
  }

  @Test
  void of_aCubeTowardsAnEdge_growsIntoItByGeometry() {
    // A cube turned by 45 degrees shows an edge: depth and way are one along the edge's own normal.
    Body edge =
        new Body(
            "b",
            Solids.box(100, 100, 100),
            Placement.identity().turned(Axis.Z, 45).moved(new Vec(300, 0, 0)));
    double corner = 300 - 100 / Math.sqrt(2);
    // Separated fastest by moving along x, for the flat face there is square to x.
    assertEquals(corner - 100 + TOLERANCE, way(box("a", 0, 0, 0, 100), RIGHT, edge), 1e-9);
  }

  @Test
  void of_aSlope_isLongerByItsSlant() {
    // Both show faces at 45 degrees: the depth grows by cos 45 of the way.
    Placement turned = Placement.identity().turned(Axis.Z, 45);
    Body a = new Body("a", Solids.box(100, 100, 100), turned);
    Body b = new Body("b", Solids.box(100, 100, 100), turned.moved(new Vec(200, 50, 0)));
    double apart = new Vec(200, 50, 0).dot(new Vec(Math.sqrt(0.5), Math.sqrt(0.5), 0)) - 100;
    assertEquals((apart + TOLERANCE) / Math.sqrt(0.5), way(a, RIGHT, b), 1e-9);
  }

  @Test
  void of_aRodInARoundHole_isTheAirBesideIt() {
    Panel plate =
        new Panel(Outline.rectangle(-50, -50, 50, 50), 20, List.of(Bore.through(0, 0, 40)));
    Body hole = new Body("b", plate, Placement.identity());
    Body rod = new Body("a", Solids.cylinder(30, 60), Placement.at(new Vec(0, 0, -20)));
    // Radii 20 and 15; both polygons err by at most 0.02 mm towards each other.
    double air = way(rod, RIGHT, hole) - TOLERANCE;
    assertTrue(air <= 5 + 1e-9 && air >= 5 - 0.04 - 0.02, "air " + air);
  }

  @Test
  void of_randomPairs_isWhereTheGrownBodyGetsTooDeep() {
    // The slow rival: overlap of the body after the way, and just before it.
    long seed = 11L;
    Random random = new Random(seed);
    int met = 0;
    for (int i = 0; i < 400; i++) {
      Body a = random(random, "a", Vec.ZERO);
      Body b = random(random, "b", new Vec(250, 20 * random.nextGaussian(), 0));
      if (depth(a, b) > 0) {
        continue;
      }
      double way = way(a, RIGHT, b);
      String label = "seed " + seed + ", case " + i + ", way " + way;
      if (way < 500) {
        met++;
        assertEquals(0, depth(moved(a, way - 0.001), b), TOLERANCE, label);
        assertTrue(depth(moved(a, way + 0.001), b) > TOLERANCE, label);
      } else {
        for (double t = 0; t < 500; t += 7) {
          assertEquals(0, depth(moved(a, t), b), TOLERANCE, label + " at " + t);
        }
      }
    }
    assertTrue(met > 100, "seed " + seed + " met only " + met);
  }

  private static Body random(Random random, String id, Vec at) {
    Solid solid =
        random.nextInt(3) == 0
            ? Solids.cylinder(20 + random.nextInt(60), 20 + random.nextInt(60))
            : Solids.box(20 + random.nextInt(60), 20 + random.nextInt(60), 20 + random.nextInt(60));
    Placement placement = Placement.identity();
    for (Axis axis : Axis.values()) {
      double degrees = random.nextBoolean() ? 90 * random.nextInt(4) : 360 * random.nextDouble();
      placement = placement.turned(axis, degrees);
    }
    return new Body(id, solid, placement.moved(at));
  }

  private static Body moved(Body body, double by) {
    return body.moved(Placement.at(new Vec(by, 0, 0)));
  }

  private static double depth(Body a, Body b) {
    return Overlap.between(a, b).map(Overlap::depth).orElse(0.0);
  }
}
