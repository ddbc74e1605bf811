package sawstead.check;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import sawstead.solid.Box;
import sawstead.solid.Vec;

class CarryingTest {
  private static Box box(double left, double right, double front, double rear) {
    return new Box(new Vec(left, front, 0), new Vec(right, rear, 18));
  }

  /** By hand: a board of 1000 whose leading edge is 100 behind the front of a table of 600. */
  @Test
  void unsupported_aLongBoard_tipsInFrontAndBehind() {
    Carrying board = new Carrying(box(-50, 50, -900, 100), List.of(box(-300, 300, 0, 600)));
    // Its middle, at -400 first, is over the table from 400 to 1000 of the way.
    assertEquals(
        List.of(new Carrying.Stretch(0, 400), new Carrying.Stretch(1000, 1200)),
        board.unsupported(1200));
  }

  /** A gap between two tables carries as long as the board lies on both. */
  @Test
  void unsupported_aGap_carriesWhileBothSidesDo() {
    List<Box> tables = List.of(box(-300, 300, 0, 600), box(-300, 300, 650, 1000));
    assertEquals(List.of(), new Carrying(box(-50, 50, 100, 300), tables).unsupported(600));
    // 40 long: in the gap of 50 it lies on neither, and before that on one side only.
    assertEquals(
        List.of(new Carrying.Stretch(480, 530)),
        new Carrying(box(-50, 50, 100, 140), tables).unsupported(700));
  }

  /** Two trestles to the left and right carry what a table in the middle alone would not. */
  @Test
  void unsupported_besideTheTable_needsASecondPlace() {
    Box table = box(0, 300, 0, 600);
    Box board = box(-900, 100, 0, 100);
    assertEquals(
        List.of(new Carrying.Stretch(0, 500)),
        new Carrying(board, List.of(table)).unsupported(500));
    // The hull of the table's patch and a trestle from y = 0 to 250: carried while it has both,
    // and as long as the line from the trestle's far corner passes behind the middle.
    Box trestle = box(-900, -800, 0, 250);
    List<Carrying.Stretch> open = new Carrying(board, List.of(table, trestle)).unsupported(500);
    assertEquals(1, open.size());
    assertEquals(500, open.get(0).to());
    // The patch on the trestle is its last 250 - s, so its rear edge stays at 250 while the
    // middle is at s + 50: with the table's rear edge at s + 100 at x = 0 the line from (-800,250)
    // at x = -400 has y = (250 + s + 100) / 2; the middle is at s + 50: equal at s = 250.
    assertEquals(250, open.get(0).from(), 1e-9);
  }

  /** Against a slow rival: the hull at many places of the way. */
  @Test
  void unsupported_isWhatManyLooksFind() {
    for (long seed = 1; seed <= 200; seed++) {
      Random random = new Random(seed);
      List<Box> carriers = new ArrayList<>();
      for (int i = 0; i < 4; i++) {
        double left = random.nextInt(1200) - 600;
        double front = random.nextInt(1500) - 300;
        carriers.add(
            box(left, left + 50 + random.nextInt(500), front, front + 50 + random.nextInt(500)));
      }
      Carrying carrying =
          new Carrying(
              box(-500 + random.nextInt(200), 400, -700, 200 - random.nextInt(300)), carriers);
      List<Carrying.Stretch> open = carrying.unsupported(1500);
      for (double s = 0.37; s < 1500; s += 3.1) {
        double at = s;
        boolean found = open.stream().anyMatch(o -> o.from() < at && at < o.to());
        boolean near =
            open.stream()
                .anyMatch(o -> Math.abs(o.from() - at) < 1e-3 || Math.abs(o.to() - at) < 1e-3);
        assertEquals(
            !carrying.isCarried(s),
            found || near && !carrying.isCarried(s),
            "seed " + seed + " at " + s);
      }
    }
  }
}
