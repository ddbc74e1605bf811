package sawstead.solid;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class TurnSweepTest {
  private static final double TOLERANCE = 0.05;
  private static final Vec TO_OPEN = new Vec(0, -1, 0);

  /** Lid w x t in the plane of x and z, its lower corner on the axis, 100 deep along y. */
  private static Body lid(double w, double t) {
    return new Body("lid", Solids.box(w, 100, t), Placement.identity());
  }

  private static Body box(String id, double x, double y, double z, double w, double d, double h) {
    return new Body(id, Solids.box(w, d, h), Placement.at(new Vec(x, y, z)));
  }

  private static Sweep open(double to, Body lid, Body... obstacles) {
    return Sweep.of(
        new Turn(Vec.ZERO, TO_OPEN, 0, to, 0),
        List.of(lid),
        List.of(obstacles),
        Set.of(),
        TOLERANCE);
  }

  /** REF-GEO-16: 300 x 18 lid, wall at 30: 92.295203 degrees. */
  @Test
  void firstContact_ofLidAndWall() {
    Body wall = box("wall", -130, -50, -500, 100, 200, 1000);
    Sweep sweep = open(180, lid(300, 18), wall);
    Sweep.FirstContact contact = sweep.firstContact().orElseThrow();
    assertEquals(92.295203, contact.at(), 0.0005);
    double radius = Math.hypot(300, 18);
    double deep = Math.acos(-(30 + Sweep.BEGIN) / radius) - Math.atan2(18, 300);
    assertEquals(Math.toDegrees(deep), contact.at(), 2e-5);
    assertEquals("lid", contact.mover());
    assertEquals("wall", contact.with());
    assertEquals(-30, contact.point().x(), 0.2);
    assertEquals(0, sweep.leastClearance().orElseThrow());
  }

  /** The same lid stops short of the wall: what is left is the distance of its corner. */
  @Test
  void leastClearance_ofLidAndWall() {
    Body wall = box("wall", -130, -50, -500, 100, 200, 1000);
    Sweep sweep = open(90, lid(300, 18), wall);
    assertTrue(sweep.firstContact().isEmpty());
    assertEquals(30 - 18, sweep.leastClearance().orElseThrow(), Sweep.CLEARANCE_ERROR);
  }

  /** A declared contact is told where it passes the tolerance. */
  @Test
  void firstContact_ofDeclaredPair() {
    Body wall = box("wall", -130, -50, -500, 100, 200, 1000);
    Turn turn = new Turn(Vec.ZERO, TO_OPEN, 0, 180, 0);
    Set<Contact> declared = Set.of(new Contact("wall", "lid"));
    Sweep sweep = Sweep.of(turn, List.of(lid(300, 18)), List.of(wall), declared, TOLERANCE);
    double radius = Math.hypot(300, 18);
    double deep = Math.acos(-(30 + TOLERANCE) / radius) - Math.atan2(18, 300);
    double at = sweep.firstContact().orElseThrow().at();
    assertTrue(at <= Math.toDegrees(deep) && at > Math.toDegrees(deep) - 0.01, "at " + at);
    assertTrue(sweep.leastClearance().isEmpty());
  }

  /** A lid resting on its rim: certificates, not creeping. */
  @Test
  void evaluations_ofLidOnItsRimAreFew() {
    Body[] rim = {
      box("front", 282, 0, -100, 18, 100, 100), box("left", 0, 0, -100, 300, 18, 100),
      box("back", 0, 0, -100, 18, 100, 100), box("under", 0, 0, -18, 300, 100, 18)
    };
    for (Body part : rim) {
      Sweep sweep = open(110, lid(300, 18), part);
      assertTrue(sweep.firstContact().isEmpty(), part.id());
      assertEquals(0, sweep.leastClearance().orElseThrow(), 1e-6, part.id());
      assertTrue(sweep.evaluations() < 100, part.id() + " took " + sweep.evaluations());
    }
  }

  /** The same seen from an open lid that closes: rest at 110 degrees, parameters running down. */
  @Test
  void firstContact_ofClosingLid() {
    Body open = lid(300, 18).moved(Placement.identity().turned(Axis.Y, -110));
    Body high = box("high", 200, 0, -50, 50, 100, 60);
    Turn turn = new Turn(Vec.ZERO, TO_OPEN, 110, 0, 110);
    Sweep sweep = Sweep.of(turn, List.of(open), List.of(high), Set.of(), TOLERANCE);
    // The corner at (200, 10) is met by the lower face when tan(angle) = 10 / 200.
    double radius = Math.hypot(200, 10);
    double met = Math.toDegrees(Math.atan2(10, 200) - Math.asin(Sweep.BEGIN / radius));
    assertEquals(met, sweep.firstContact().orElseThrow().at(), 2e-5);
    Body low = box("low", 200, 0, -50, 50, 100, 50);
    assertTrue(
        Sweep.of(turn, List.of(open), List.of(low), Set.of(), TOLERANCE).firstContact().isEmpty());
  }

  /**
   * REF-GEO-15: what a board 300 x 18 sweeps in a quarter turn, 76,340.3037 mm2, by the part of
   * random posts that it meets.
   */
  @Test
  void firstContact_meetsTheSweptArea() {
    RandomSolids random = new RandomSolids(170);
    double side = 320;
    int all = 6000;
    int met = 0;
    for (int i = 0; i < all; i++) {
      double x = random.between(-side / 4, side);
      double z = random.between(-side / 4, side);
      Body post = box("post", x, 40, z, 0.1, 20, 0.1);
      met += open(90, lid(300, 18), post).firstContact().isPresent() ? 1 : 0;
    }
    double whole = 1.25 * side * 1.25 * side;
    double part = (double) met / all;
    double spread = 4 * Math.sqrt(part * (1 - part) / all) * whole;
    assertEquals(76_340.3037, part * whole, spread);
  }

  /** The rival looks at a few thousand angles. */
  @ParameterizedTest
  @ValueSource(longs = {180, 181, 182, 183})
  void firstContact_agreesWithLookingAtManyAngles(long seed) {
    RandomSolids random = new RandomSolids(seed);
    int clear = 0;
    for (int i = 0; i < 60; i++) {
      Vec at = random.point(-200, 200);
      Turn turn =
          new Turn(at, random.direction(), random.between(-90, 0), random.between(0, 120), 0);
      Piece a = random.piece(200);
      Piece b = random.piece(200);
      TurnSweep sweep = new TurnSweep(turn, TOLERANCE);
      double found = sweep.firstContact(new Piece[] {a}, new Piece[] {b}, false);
      double least = sweep.leastDistance(new Piece[] {a}, new Piece[] {b}, 1e6);
      String where = "seed " + seed + ", case " + i;
      double nearest = Double.POSITIVE_INFINITY;
      Gjk gjk = new Gjk();
      int looks = 500;
      for (int k = 0; k <= looks; k++) {
        double progress = (turn.to() - turn.from()) * k / looks;
        Piece there = a.placed(turn.at(turn.from() + progress));
        if (progress < found) {
          assertTrue(Penetration.depth(there, b, 0) <= TOLERANCE + 1e-9, where);
        }
        nearest = Math.min(nearest, gjk.distance(there, b, Double.POSITIVE_INFINITY));
      }
      if (found == PairSweep.NONE) {
        clear++;
        assertTrue(least <= nearest + Sweep.CLEARANCE_ERROR, where);
        double radius = new TurnHeights(turn.at(), turn.direction()).radius(a.points);
        double step = Math.toRadians((turn.to() - turn.from()) / looks / 2) * radius;
        assertTrue(least >= nearest - step - 1e-6, where);
      } else {
        Piece deep = a.placed(turn.at(turn.from() + sweep.deepAt()));
        assertTrue(Penetration.depth(deep, b, 0) > 0, where);
        if (found > 0) {
          Piece begin = a.placed(turn.at(turn.from() + found));
          assertTrue(Penetration.depth(begin, b, 0) <= Sweep.BEGIN + 1e-9, where);
        }
      }
    }
    assertTrue(clear > 3 && clear < 57, "clear " + clear);
  }
}
