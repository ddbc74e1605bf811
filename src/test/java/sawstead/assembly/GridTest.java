package sawstead.assembly;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import sawstead.solid.Box;
import sawstead.solid.Vec;

/** The compressed grid against an exhaustive search of every step of a whole-number lattice. */
class GridTest {
  private static final double PLAY = 0.025;
  private static final int ROOM = 9;

  private static Box box(double x0, double y0, double z0, double x1, double y1, double z1) {
    return new Box(new Vec(x0, y0, z0), new Vec(x1, y1, z1));
  }

  /**
   * Outside check: boxes with whole-number corners can only be left by moves that an exhaustive
   * search of whole-number translations finds, since every gap is a whole number wide.
   */
  @Test
  void way_agreesWithExhaustiveLatticeSearch() {
    int free = 0;
    int locked = 0;
    for (int seed = 0; seed < 200; seed++) {
      Random random = new Random(seed);
      List<Box> others = cage(random);
      for (int i = 0; i < random.nextInt(4); i++) {
        int x = random.nextInt(ROOM);
        int y = random.nextInt(ROOM);
        int z = random.nextInt(ROOM);
        Box other = box(x, y, z, x + 1 + random.nextInt(3), y + 1 + random.nextInt(3), z + 1);
        if (!overlaps(other, box(4, 4, 4, 6, 5, 6), 0, 0, 0)) {
          others.add(other);
        }
      }
      List<Box> movers = List.of(box(4, 4, 4, 6, 5, 6));
      boolean expected = Lattice.leaves(movers, others);
      boolean found =
          Grid.of(movers, others, PLAY, Optional.empty()).orElseThrow().way().isPresent();
      assertEquals(expected, found, "seed " + seed);
      free += found ? 1 : 0;
      locked += found ? 0 : 1;
    }
    assertTrue(free > 20 && locked > 20, "both answers are met: " + free + ", " + locked);
  }

  /** Six walls round the room, two of them with a hole of 1 to 3 by 1 to 3. */
  private static List<Box> cage(Random random) {
    List<Box> walls = new ArrayList<>();
    int first = random.nextInt(3);
    for (int axis = 0; axis < 3; axis++) {
      for (int side = 0; side < 2; side++) {
        double at = side == 0 ? -1 : ROOM;
        int u = 2 + random.nextInt(4);
        int v = 2 + random.nextInt(4);
        boolean hole = axis == first;
        int du = hole ? 1 + random.nextInt(3) : 0;
        int dv = hole ? 1 + random.nextInt(3) : 0;
        wall(walls, axis, at, -1, -1, ROOM + 1, v);
        wall(walls, axis, at, -1, v + dv, ROOM + 1, ROOM + 1);
        wall(walls, axis, at, -1, -1, u, ROOM + 1);
        wall(walls, axis, at, u + du, -1, ROOM + 1, ROOM + 1);
      }
    }
    return walls;
  }

  private static void wall(
      List<Box> walls, int axis, double at, double u0, double v0, double u1, double v1) {
    walls.add(
        switch (axis) {
          case 0 -> box(at, u0, v0, at + 1, u1, v1);
          case 1 -> box(u0, at, v0, u1, at + 1, v1);
          default -> box(u0, v0, at, u1, v1, at + 1);
        });
  }

  /** Flood fill of all whole-number translations: slow and obvious. */
  private static final class Lattice {
    private static final int R = ROOM + 5;

    static boolean leaves(List<Box> movers, List<Box> others) {
      boolean[][][] seen = new boolean[2 * R + 1][2 * R + 1][2 * R + 1];
      Deque<int[]> open = new ArrayDeque<>(List.of(new int[] {0, 0, 0}));
      seen[R][R][R] = true;
      while (!open.isEmpty()) {
        int[] at = open.poll();
        if (Math.abs(at[0]) == R || Math.abs(at[1]) == R || Math.abs(at[2]) == R) {
          return true;
        }
        for (int[] step :
            new int[][] {{1, 0, 0}, {-1, 0, 0}, {0, 1, 0}, {0, -1, 0}, {0, 0, 1}, {0, 0, -1}}) {
          int[] to = {at[0] + step[0], at[1] + step[1], at[2] + step[2]};
          if (!seen[to[0] + R][to[1] + R][to[2] + R] && free(movers, others, to)) {
            seen[to[0] + R][to[1] + R][to[2] + R] = true;
            open.add(to);
          }
        }
      }
      return false;
    }

    private static boolean free(List<Box> movers, List<Box> others, int[] by) {
      return movers.stream()
          .noneMatch(m -> others.stream().anyMatch(o -> overlaps(o, m, by[0], by[1], by[2])));
    }
  }

  private static boolean overlaps(Box o, Box m, double x, double y, double z) {
    return o.low().x() < m.high().x() + x
        && m.low().x() + x < o.high().x()
        && o.low().y() < m.high().y() + y
        && m.low().y() + y < o.high().y()
        && o.low().z() < m.high().z() + z
        && m.low().z() + z < o.high().z();
  }

  /** Every leg of a way that is found is walked in steps of a hundredth: nothing is entered. */
  @Test
  void way_neverEntersAnObstacle() {
    for (int seed = 0; seed < 60; seed++) {
      Random random = new Random(seed);
      Box mover = box(0, 0, 0, 10, 10, 10);
      List<Box> others = new ArrayList<>();
      for (int i = 0; i < 12; i++) {
        double x = random.nextDouble() * 60 - 30;
        double y = random.nextDouble() * 60 - 30;
        double z = random.nextDouble() * 60 - 30;
        Box other = box(x, y, z, x + 25, y + 25, z + 25);
        if (!overlaps(other, mover, 0, 0, 0)) {
          others.add(other);
        }
      }
      Optional<List<Vec>> way =
          Grid.of(List.of(mover), others, PLAY, Optional.empty()).orElseThrow().way();
      if (way.isEmpty()) {
        continue;
      }
      Vec at = Vec.ZERO;
      for (Vec leg : way.get()) {
        for (int i = 0; i <= 100; i++) {
          Vec p = at.plus(leg.scale(i / 100.0));
          Box there = new Box(mover.low().plus(p), mover.high().plus(p)).grown(-PLAY - 1e-9);
          String where = "seed " + seed + " at " + p;
          assertTrue(others.stream().noneMatch(o -> overlaps(o, there, 0, 0, 0)), where);
        }
        at = at.plus(leg);
      }
    }
  }

  /**
   * A bay of walls with one opening: the verdict flips where the opening is a play's two sides too
   * narrow.
   */
  @Test
  void way_flipsAtTheWidthOfTheOpening() {
    for (double width : new double[] {399.9, 399.94, 399.96, 400, 401}) {
      List<Box> bay =
          List.of(
              box(-100, -10, 0, 0, 500, 500),
              box(width, -10, 0, width + 100, 500, 500),
              box(-100, 500, 0, width + 100, 600, 500),
              box(-100, -10, 500, width + 100, 600, 520));
      Box vac = box(width / 2 - 200, 50, 0, width / 2 + 200, 400, 480);
      boolean passes =
          Grid.of(List.of(vac), bay, PLAY, Optional.of(0.0)).orElseThrow().way().isPresent();
      assertEquals(width > 400 - 2 * PLAY, passes, "opening of " + width);
    }
  }

  @Test
  void way_turnsACornerWithTheFewestLegs() {
    List<Box> shelf =
        List.of(
            box(-50, -50, 10, 50, 60, 12),
            box(-50, -50, -2, 50, 60, 0),
            box(-50, 10, 0, 50, 12, 10),
            box(10, -10, 0, 12, 10, 10),
            box(-50, -12, 0, 5, -10, 10),
            box(-14, -10, 0, -12, 10, 10));
    Optional<List<Vec>> way =
        Grid.of(List.of(box(0, 0, 0, 4, 4, 9)), shelf, PLAY, Optional.empty()).orElseThrow().way();
    assertTrue(way.isPresent());
    assertEquals(2, way.get().size(), () -> way.get().toString());
  }

  @Test
  void way_downThroughTheFloorIsNone() {
    List<Box> lid =
        List.of(
            box(-1, -1, 10, 11, 11, 12),
            box(-2, -1, 0, -1, 11, 12),
            box(11, -1, 0, 12, 11, 12),
            box(-2, -2, 0, 12, -1, 12),
            box(-2, 11, 0, 12, 12, 12));
    List<Box> mover = List.of(box(0, 0, 0, 10, 10, 9));
    assertTrue(Grid.of(mover, lid, PLAY, Optional.empty()).orElseThrow().way().isPresent());
    assertFalse(Grid.of(mover, lid, PLAY, Optional.of(-PLAY)).orElseThrow().way().isPresent());
  }
}
