package sawstead.preview.scene;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import sawstead.solid.Box;
import sawstead.solid.Vec;

/** The pinhole camera against its closed formula and its own invariants. */
class EyeTest {
  private static final Box BOX = new Box(new Vec(-300, 0, 0), new Vec(400, 900, 1000));

  @Test
  void project_fromTheInfeed_hasRightAtTheRightAndUpAtTheTop() {
    Eye eye = new Eye(new Vec(0, 0, 500), 0, 0, 4000);
    // At 4000 mm the picture is 2 * 4000 * tan(12 degrees) = 1700.45 mm high.
    double pixels = 1000 / (2 * 4000 * Math.tan(Math.toRadians(12)));
    Eye.Spot spot = eye.project(new Vec(100, 0, 700), 1600, 1000).orElseThrow();
    assertEquals(800 + 100 * pixels, spot.x(), 1e-6);
    assertEquals(500 - 200 * pixels, spot.y(), 1e-6);
    assertEquals(0.588, pixels, 0.001);
  }

  @Test
  void project_behindTheEye_isNothing() {
    assertTrue(new Eye(Vec.ZERO, 0, 0, 1000).project(new Vec(0, -2000, 0), 9, 9).isEmpty());
  }

  @ParameterizedTest
  @EnumSource(Stance.class)
  void onto_fillsTheShareOfThePictureAndNoMore(Stance stance) {
    Eye eye = Eye.onto(List.of(BOX), stance, 1.6, 0.8);
    double widest = 0;
    for (Vec corner : Eye.corners(BOX)) {
      Eye.Spot spot = eye.project(corner, 1600, 1000).orElseThrow();
      widest = Math.max(widest, Math.abs(spot.x() - 800) / 800);
      widest = Math.max(widest, Math.abs(spot.y() - 500) / 500);
    }
    assertTrue(widest <= 0.8 + 1e-9, stance + " " + widest);
    assertEquals(0.8, widest, 0.02, stance.word());
  }

  @Test
  void directions_areSquareAndRightHanded() {
    long seed = 77;
    Random random = new Random(seed);
    for (int i = 0; i < 200; i++) {
      Eye eye = new Eye(Vec.ZERO, random.nextDouble() * 720, random.nextDouble() * 180 - 90, 900);
      Vec cross = eye.right().cross(eye.down());
      assertEquals(0, cross.distance(eye.ahead()), 1e-12, "seed " + seed);
      assertEquals(1, eye.right().length(), 1e-12);
    }
  }

  @Test
  void zoomed_keepsWhatIsUnderThePointer() {
    Eye eye = new Eye(new Vec(10, 20, 700), 33, 20, 3000);
    Vec point = eye.target().plus(eye.right().scale(250)).plus(eye.down().scale(-120));
    Eye.Spot before = eye.project(point, 1200, 800).orElseThrow();
    Eye.Spot after = eye.zoomed(0.6, before, 1200, 800).project(point, 1200, 800).orElseThrow();
    assertEquals(before.x(), after.x(), 1e-9);
    assertEquals(before.y(), after.y(), 1e-9);
  }

  @Test
  void panned_carriesTheTargetWithThePointer() {
    Eye eye = new Eye(new Vec(10, 20, 700), -70, 35, 3000);
    Eye.Spot spot = eye.panned(40, -25, 800).project(eye.target(), 1200, 800).orElseThrow();
    assertEquals(640, spot.x(), 1e-9);
    assertEquals(375, spot.y(), 1e-9);
  }

  @Test
  void ray_throughTheProjectionOfAPoint_passesThePoint() {
    Eye eye = new Eye(new Vec(0, 400, 500), 38, 24, 4000);
    Vec point = new Vec(200, 100, 900);
    Eye.Spot spot = eye.project(point, 1600, 1000).orElseThrow();
    Vec ray = eye.ray(spot.x(), spot.y(), 1600, 1000);
    assertEquals(0, ray.cross(point.minus(eye.place()).unit()).length(), 1e-12);
  }

  @Test
  void towards_turnsTheShortWayRound() {
    Eye from = new Eye(Vec.ZERO, 170, 10, 1000);
    Eye to = new Eye(Vec.ZERO, -170, 10, 4000);
    assertEquals(180, Math.abs(from.towards(to, 0.5).azimuth()), 1e-9);
    assertEquals(2000, from.towards(to, 0.5).distance(), 1e-9);
    assertEquals(to, from.towards(to, 1));
  }
}
