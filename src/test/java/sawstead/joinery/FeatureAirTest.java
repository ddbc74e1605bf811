package sawstead.joinery;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import sawstead.solid.Axis;
import sawstead.solid.Bevel;
import sawstead.solid.Body;
import sawstead.solid.Bore;
import sawstead.solid.Distance;
import sawstead.solid.EdgeBore;
import sawstead.solid.Face;
import sawstead.solid.Feature;
import sawstead.solid.Mark;
import sawstead.solid.Opening;
import sawstead.solid.Outline;
import sawstead.solid.Placement;
import sawstead.solid.PocketBore;
import sawstead.solid.Recess;
import sawstead.solid.Vec;

class FeatureAirTest {
  private static final Board BLANK = Bench.board("b", Axis.Z, 0, 0, 0, 400, 300, 18);

  /** One of each kind that takes material. */
  private static final List<Feature> CUTS =
      List.of(
          new Opening(Outline.polygon(50, 50, 150, 50, 150, 150, 120, 150, 120, 80, 50, 80)),
          new Recess("groove", Outline.bar(0, 200, 400, 230, 20), 9, Face.FRONT),
          new Recess("relief", Outline.slot(200, 60, 300, 90, 16), 5, Face.BACK),
          Bore.through(250, 150, 64),
          new Bore(350, 150, 12, 10, Face.BACK),
          new Bevel(0, 0, 400, 0, Face.FRONT, 4, 3),
          new EdgeBore(new Vec(400, 100, 9), new Vec(-1, 0, 0), 8, 40),
          new PocketBore(new Vec(30, 250, 18), new Vec(-0.966, 0, -0.259), 9.5, 20));

  @Test
  void of_answersForEveryKindAndLeavesOutMarks() {
    Board cut = BLANK.with(CUTS.toArray(new Feature[0])).with(new Mark("m", Face.FRONT, List.of()));
    assertEquals(CUTS, FeatureAir.of(cut).stream().map(FeatureAir::feature).toList());
  }

  /** Rival: the kernel's distance between a thin rod and the air as if it were material. */
  @ParameterizedTest
  @ValueSource(longs = {21, 22, 23})
  void distance_agreesWithTheKernel(long seed) {
    Random random = new Random(seed);
    List<FeatureAir> airs = FeatureAir.of(BLANK.with(CUTS.toArray(new Feature[0])));
    for (int i = 0; i < 60; i++) {
      Vec from = point(random);
      Vec to = i % 3 == 0 ? new Vec(from.x(), from.y(), from.z() - 25) : point(random);
      Body rod = new Rod(from, to, 0.005).cylinder("rod", Placement.identity());
      for (FeatureAir cut : airs) {
        double ours = cut.air().distance(from, to);
        double theirs = Distance.between(rod, cut.air().body("air", Placement.identity())).value();
        boolean rounded = cut.air() instanceof RodAir;
        String what = "seed " + seed + " " + i + " " + cut.feature() + " " + from + " " + to;
        // Polygons around arcs: 0.02 mm each. A rounded end reaches its radius farther.
        double more = rounded ? ((RodAir) cut.air()).rod().radius() : 0;
        assertTrue(ours <= theirs + 0.05, what + ours + " " + theirs);
        assertTrue(ours >= theirs - 0.05 - more, what + ours + " " + theirs);
      }
    }
  }

  @Test
  void distance_atWallsAndCorners() {
    FeatureAir groove = FeatureAir.of(BLANK.with(CUTS.get(0))).get(0);
    assertEquals(
        Math.hypot(20, 10),
        groove.air().distance(new Vec(100, 160, 18), new Vec(100, 160, 0)),
        1e-12);
    assertEquals(10, groove.air().distance(new Vec(130, 160, 18), new Vec(130, 160, 0)), 1e-12);
    assertEquals(
        0, groove.air().distance(new Vec(130, 149.999, 18), new Vec(130, 149.999, 0)), 1e-12);
  }

  private static Vec point(Random random) {
    return new Vec(
        450 * random.nextDouble() - 25,
        350 * random.nextDouble() - 25,
        40 * random.nextDouble() - 10);
  }
}
