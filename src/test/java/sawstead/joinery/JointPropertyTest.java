package sawstead.joinery;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import sawstead.solid.Body;
import sawstead.solid.Face;
import sawstead.solid.Overlap;

/**
 * What every joint promises, on random boards that lie any way round: nothing overlaps afterwards
 * by more than 0.001 mm, and every fastener stays in what it joins and out of everything else.
 */
class JointPropertyTest {
  private static final int ROUNDS = 30;
  private static final double TOUCH = 0.001;

  private int fastened;

  /** A joint that puts no fastener keeps every promise about them: most must have some. */
  @AfterEach
  void mostJointsWereFastened() {
    assertTrue(fastened > ROUNDS, () -> fastened + " fasteners");
  }

  @ParameterizedTest
  @ValueSource(longs = {101, 102})
  void screw_throughAFaceIntoAnEdge(long seed) {
    Random random = new Random(seed);
    for (int i = 0; i < ROUNDS; i++) {
      Board[] pair = new RandomPair(random).edgeOnFace();
      check(new ScrewJoint(random.nextBoolean()), pair, random, "seed " + seed + " round " + i);
    }
  }

  @ParameterizedTest
  @ValueSource(longs = {111, 112})
  void screw_faceOnFace(long seed) {
    Random random = new Random(seed);
    for (int i = 0; i < ROUNDS; i++) {
      Board[] pair = new RandomPair(random).lap();
      check(new ScrewJoint(random.nextBoolean()), pair, random, "seed " + seed + " round " + i);
    }
  }

  @ParameterizedTest
  @ValueSource(longs = {121, 122})
  void pocket_fromEitherFace(long seed) {
    Random random = new Random(seed);
    for (int i = 0; i < ROUNDS; i++) {
      Board[] pair = new RandomPair(random).edgeOnFace();
      Face face = random.nextBoolean() ? Face.FRONT : Face.BACK;
      check(new PocketJoint(face, true), pair, random, "seed " + seed + " round " + i);
    }
  }

  @ParameterizedTest
  @ValueSource(longs = {131, 132})
  void brad_throughAFace(long seed) {
    Random random = new Random(seed);
    for (int i = 0; i < ROUNDS; i++) {
      RandomPair any = new RandomPair(random);
      Board[] pair = random.nextBoolean() ? any.edgeOnFace() : any.lap();
      check(new BradJoint(), pair, random, "seed " + seed + " round " + i);
    }
  }

  @ParameterizedTest
  @ValueSource(longs = {141, 142})
  void dado_withAndWithoutBrads(long seed) {
    Random random = new Random(seed);
    for (int i = 0; i < ROUNDS; i++) {
      RandomPair any = new RandomPair(random);
      Board[] pair = any.edgeOnFace();
      Joint joint = new DadoJoint(any.range(1, 10), any.range(0, 0.4), random.nextBoolean());
      check(joint, pair, random, "seed " + seed + " round " + i);
    }
  }

  @ParameterizedTest
  @ValueSource(longs = {151, 152})
  void rabbet_atEitherEdge(long seed) {
    Random random = new Random(seed);
    for (int i = 0; i < ROUNDS; i++) {
      RandomPair any = new RandomPair(random);
      Board[] pair = any.corner();
      Joint joint = new RabbetJoint(any.range(1, 10), any.range(0, 0.4), random.nextBoolean());
      check(joint, pair, random, "seed " + seed + " round " + i);
    }
  }

  @ParameterizedTest
  @ValueSource(longs = {161, 162})
  void leg_ofTwoStrips(long seed) {
    Random random = new Random(seed);
    for (int i = 0; i < ROUNDS; i++) {
      RandomPair any = new RandomPair(random);
      double t = any.range(11, 25);
      double section = any.range(60, 120);
      double length = any.range(200, 800);
      double lapped = LegJoint.lappedWidth(section, t);
      Board face = any.board("leg-face", 0, lapped, 0, 0, section, section, length);
      Board strip = any.board("leg-lapped", 1, 0, 0, 0, lapped, t, length);
      LegJoint joint = new LegJoint(random.nextBoolean());
      Joined leg = joint.join(face, strip, Bench.fixings());
      check(leg, Bench.fixings(), "seed " + seed + " round " + i);
      // Equal outside faces, by definition of the leg.
      assertEquals(section, leg.a().box().union(leg.b().box()).size().along(any.axis(0)), 1e-9);
      assertEquals(section, leg.a().box().union(leg.b().box()).size().along(any.axis(1)), 1e-9);
    }
  }

  @ParameterizedTest
  @ValueSource(longs = {171, 172})
  void hinge_onFlushSides(long seed) {
    Random random = new Random(seed);
    for (int i = 0; i < ROUNDS; i++) {
      RandomPair any = new RandomPair(random);
      double gap = random.nextBoolean() ? 0 : any.range(0, 3);
      double length = any.range(100, 700);
      Board stay = any.board("stay", 1, 0, -any.range(12, 25), 0, 200, 0, length);
      Board lid = any.board("lid", 1, 200 + gap, -any.range(12, 25), 0, 600, 0, length);
      HingeJoint joint =
          HingeJoint.outside(
                  "hinge",
                  new HingeProfile(any.range(4, 7), 16, 1.2, 50),
                  any.axis(1),
                  any.isPlus(1))
              .keepingClear(gaps(any, 2, 150));
      checkHinge(joint, stay, lid, "seed " + seed + " round " + i);
    }
  }

  @ParameterizedTest
  @ValueSource(longs = {181, 182})
  void hinge_onTheOutsideOfAWallAndItsLid(long seed) {
    Random random = new Random(seed);
    for (int i = 0; i < ROUNDS; i++) {
      RandomPair any = new RandomPair(random);
      double length = any.range(100, 700);
      double lidThickness = any.range(17, 25);
      Board wall = any.board("wall", 1, 0, -any.range(12, 25), 0, 200, 0, length);
      Board lid = any.board("lid", 0, 200, -400, 0, 200 + lidThickness, 0, length);
      HingeJoint joint =
          HingeJoint.outside(
              "hinge", new HingeProfile(any.range(4, 6), 16, 1.2, 50), any.axis(1), any.isPlus(1));
      checkHinge(joint, wall, lid, "seed " + seed + " round " + i);
    }
  }

  @ParameterizedTest
  @ValueSource(longs = {191, 192})
  void hinge_underACorner(long seed) {
    Random random = new Random(seed);
    for (int i = 0; i < ROUNDS; i++) {
      RandomPair any = new RandomPair(random);
      double gap = random.nextBoolean() ? 0 : any.range(0, 3);
      double length = any.range(100, 700);
      Board upright = any.board("upright", 0, 0, 0, 0, any.range(12, 25), 200, length);
      double face = upright.thickness();
      Board leaf = any.board("flap", 1, face + gap, 180, 0, 400, 200, length);
      HingeJoint joint =
          new HingeJoint(
              "hinge",
              new HingeProfile(any.range(4, 7), 16, 1.2, 50),
              Mounting.UNDER_CORNER,
              any.axis(1),
              !any.isPlus(1),
              List.of());
      checkHinge(joint, upright, leaf, "seed " + seed + " round " + i);
    }
  }

  /**
   * Stretches in plain coordinates would need turning: take them from the shared length instead.
   */
  private static List<Stretch> gaps(RandomPair any, int plain, double at) {
    Board ruler = any.board("ruler", 0, 0, 0, at, 1, 1, at + 30);
    return List.of(
        new Stretch(
            ruler.box().low().along(any.axis(plain)), ruler.box().high().along(any.axis(plain))));
  }

  private void checkHinge(HingeJoint joint, Board a, Board b, String what) {
    Joined hinged = joint.join(a, b, Bench.fixings());
    check(hinged, Bench.fixings(), what);
    assertFalse(hinged.bodies().isEmpty(), what);
    // Open it in steps: neither the lid nor its leaf may enter anything that stays.
    HingeLine line = hinged.axis().orElseThrow();
    List<Body> stays = new ArrayList<>(List.of(hinged.a().body()));
    List<Body> turns = new ArrayList<>(List.of(hinged.b().body()));
    for (Body body : hinged.bodies()) {
      (body.id().contains("leaf-b") ? turns : stays).add(body);
    }
    for (int step = 1; step <= 8; step++) {
      double angle = joint.greatestOpening() * step / 8;
      for (Body turning : turns) {
        Body turned =
            turning.moved(
                sawstead.solid.Placement.identity().turned(line.at(), line.direction(), angle));
        for (Body still : stays) {
          assertNoOverlap(turned, still, what + " at " + angle);
        }
      }
    }
  }

  /** Joins the pair, given either way round, with or without glue. */
  private void check(Joint joint, Board[] pair, Random random, String what) {
    Fixings fixings = random.nextBoolean() ? Bench.fixings() : Bench.fixings().withoutGlue();
    Board a = pair[0];
    Board b = pair[1];
    if (random.nextBoolean()) {
      a = pair[1];
      b = pair[0];
    }
    check(joint.join(a, b, fixings), fixings, what + " " + joint);
  }

  private void check(Joined joined, Fixings fixings, String what) {
    List<Body> bodies = new ArrayList<>(joined.bodies());
    bodies.add(joined.a().body());
    bodies.add(joined.b().body());
    for (int i = 0; i < bodies.size(); i++) {
      for (int k = 0; k < i; k++) {
        assertNoOverlap(bodies.get(i), bodies.get(k), what);
      }
    }
    fastened += joined.fasteners().size();
    Set<String> ids = new HashSet<>();
    for (Fastener fastener : joined.fasteners()) {
      String which = what + " " + fastener;
      assertTrue(ids.add(fastener.id()), which);
      FastenerGeometry look = Bench.look(fastener, joined);
      assertEquals(List.of(), look.crossings(), which);
      assertFalse(look.breaksThrough(), () -> which + " open " + look.volumeInTheOpen());
      assertTrue(look.tipCover() >= ScrewShelf.TIP_COVER - 1e-5, () -> which + look.tipCover());
      double inAll = 0;
      for (String part : fastener.joins()) {
        Body body = bodies.stream().filter(x -> x.id().equals(part)).findFirst().orElseThrow();
        double length = look.lengthIn(body);
        assertTrue(length > 0, () -> which + " misses " + part);
        inAll += length;
      }
      assertEquals(fastener.length(), inAll, 1e-4, which);
      assertTrue(
          look.strays(bodies).isEmpty(), () -> which + " strays into " + look.strays(bodies));
      for (Fastener other : joined.fasteners()) {
        if (other != fastener) {
          assertTrue(look.gap(other) >= Candidate.MARGIN - 0.05, () -> which + " near " + other);
        }
      }
    }
  }

  private static void assertNoOverlap(Body one, Body other, String what) {
    double depth = Overlap.between(one, other).map(Overlap::depth).orElse(0.0);
    assertTrue(depth <= TOUCH, () -> what + ": " + one + " in " + other + " by " + depth);
  }
}
