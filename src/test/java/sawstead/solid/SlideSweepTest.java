package sawstead.solid;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class SlideSweepTest {
  private static final double TOLERANCE = 0.05;

  private static Body box(String id, double x, double y, double z, double w, double d, double h) {
    return new Body(id, Solids.box(w, d, h), Placement.at(new Vec(x, y, z)));
  }

  private static Sweep slide(Slide slide, Body mover, Body... obstacles) {
    return Sweep.of(slide, List.of(mover), List.of(obstacles), Set.of(), TOLERANCE);
  }

  @Test
  void firstContact_ofBoardAndStop() {
    Body board = box("board", 0, 0, 0, 100, 50, 18);
    Body stop = box("stop", 250, 10, 0, 20, 20, 20);
    Sweep sweep = slide(new Slide(new Vec(2, 0, 0), 0, 400, 0), board, stop);
    Sweep.FirstContact contact = sweep.firstContact().orElseThrow();
    assertEquals(150 + Sweep.BEGIN, contact.at(), 1e-9);
    assertEquals(250, contact.point().x(), 0.1);
    assertEquals(20, contact.point().y(), 1e-9);
    assertTrue(slide(new Slide(Axis.X.unit(), 0, 149, 0), board, stop).firstContact().isEmpty());
  }

  /** Rest counts: at parameter p the board has moved by p - rest. */
  @Test
  void firstContact_countsFromRestAndBackwards() {
    Body board = box("board", 0, 0, 0, 100, 50, 18);
    Body stop = box("stop", -250, 10, 0, 20, 20, 20);
    Sweep sweep = slide(new Slide(Axis.X.unit(), 500, 0, 300), board, stop);
    assertEquals(300 - 230 - Sweep.BEGIN, sweep.firstContact().orElseThrow().at(), 1e-9);
  }

  /** A runner in its slot touches floor and sides all the way, and that is no contact. */
  @Test
  void firstContact_ofRunnerInSlotIsNone() {
    Panel top =
        new Panel(
            Outline.rectangle(0, 0, 600, 300),
            30,
            List.of(new Recess("groove", Outline.bar(0, 150, 600, 150, 19), 10, Face.FRONT)));
    Body table = new Body("table", top, Placement.identity());
    Body runner = box("runner", -100, 140.5, 20, 200, 19, 9.5);
    Sweep sweep = slide(new Slide(Axis.X.unit(), 0, 600, 0), runner, table);
    assertTrue(sweep.firstContact().isEmpty());
    assertEquals(0, sweep.leastClearance().orElseThrow());
    Body wide = box("runner", -300, 140.4, 20, 200, 19.2, 9.5);
    double at =
        slide(new Slide(Axis.X.unit(), 0, 600, 0), wide, table).firstContact().orElseThrow().at();
    assertEquals(100 + Sweep.BEGIN, at, 1e-6);
  }

  @Test
  void leastClearance_isThatOfTheNearestPass() {
    Body board = box("board", 0, 0, 0, 100, 50, 18);
    Body post = box("post", 250, 60, 0, 20, 20, 20);
    Sweep past = slide(new Slide(Axis.X.unit(), 0, 400, 0), board, post);
    assertEquals(10, past.leastClearance().orElseThrow(), 1e-6);
    Sweep shortOf = slide(new Slide(Axis.X.unit(), 0, 100, 0), board, post);
    assertEquals(Math.hypot(50, 10), shortOf.leastClearance().orElseThrow(), 1e-6);
  }

  /** A cuff pulled through its round hole: decided with the hole open. */
  @Test
  void firstContact_ofCuffThroughHole() {
    Panel bored =
        new Panel(Outline.rectangle(0, 0, 600, 300), 18, List.of(Bore.through(100, 100, 64)));
    Body board = new Body("board", bored, Placement.identity());
    Body cuff = new Body("cuff", Solids.cylinder(60, 40), Placement.at(new Vec(100, 100, 30)));
    Slide down = new Slide(new Vec(0, 0, -1), 0, 100, 0);
    Sweep sweep = slide(down, cuff, board);
    assertTrue(sweep.firstContact().isEmpty());
    assertEquals(2, sweep.leastClearance().orElseThrow(), 2 * Outline.ARC_ERROR);
    Body beside = cuff.moved(Placement.at(new Vec(10, 0, 0)));
    assertEquals(12, slide(down, beside, board).firstContact().orElseThrow().at(), 0.002);
  }

  /** REF-GEO-14: volume swept by the unit cube, by the part of random grains that it meets. */
  @ParameterizedTest
  @CsvSource({"2, 2, 0, 5", "1, 2, 3, 7"})
  void firstContact_meetsTheSweptVolume(double x, double y, double z, double volume) {
    RandomSolids random = new RandomSolids(200);
    double scale = 100;
    Body cube = box("cube", 0, 0, 0, scale, scale, scale);
    Vec way = new Vec(x, y, z).scale(scale);
    Slide slide = new Slide(way, 0, way.length(), 0);
    int all = 20_000;
    int met = 0;
    for (int i = 0; i < all; i++) {
      Body grain =
          box(
              "grain",
              random.between(0, (1 + x) * scale),
              random.between(0, (1 + y) * scale),
              random.between(0, (1 + z) * scale),
              0.1,
              0.1,
              0.1);
      met += slide(slide, cube, grain).firstContact().isPresent() ? 1 : 0;
    }
    double whole = (1 + x) * (1 + y) * (1 + z);
    double part = (double) met / all;
    double spread = 4 * Math.sqrt(part * (1 - part) / all) * whole;
    // A grain of 0.1 counts as a point to within a few thousandths of the volume.
    assertEquals(volume, part * whole, spread + 0.005 * volume);
  }

  /** The rival looks at a few thousand places. */
  @ParameterizedTest
  @ValueSource(longs = {210, 211, 212})
  void firstContact_agreesWithLookingAtManyPlaces(long seed) {
    RandomSolids random = new RandomSolids(seed);
    int clear = 0;
    for (int i = 0; i < 100; i++) {
      Slide slide =
          new Slide(random.direction(), random.between(-200, 0), random.between(0, 200), 0);
      Piece a = random.piece(100);
      Piece b = random.piece(100);
      SlideSweep sweep = new SlideSweep(slide, TOLERANCE);
      double found = sweep.firstContact(new Piece[] {a}, new Piece[] {b}, false);
      double least = sweep.leastDistance(new Piece[] {a}, new Piece[] {b}, 1e6);
      String where = "seed " + seed + ", case " + i;
      double nearest = Double.POSITIVE_INFINITY;
      Gjk gjk = new Gjk();
      int looks = 1000;
      for (int k = 0; k <= looks; k++) {
        double progress = (slide.to() - slide.from()) * k / looks;
        Piece there = a.placed(slide.at(slide.from() + progress));
        if (progress < found) {
          assertTrue(Penetration.depth(there, b, 0) <= TOLERANCE + 1e-9, where);
        }
        nearest = Math.min(nearest, gjk.distance(there, b, Double.POSITIVE_INFINITY));
      }
      if (found == PairSweep.NONE) {
        clear++;
        assertTrue(least <= nearest + 1e-6, where);
        assertTrue(least >= nearest - (slide.to() - slide.from()) / looks / 2 - 1e-6, where);
      } else if (found > 0) {
        Piece begin = a.placed(slide.at(slide.from() + found));
        assertEquals(Sweep.BEGIN, Penetration.depth(begin, b, 0), 1e-9, where);
        Piece deep = a.placed(slide.at(slide.from() + sweep.deepAt()));
        assertEquals(TOLERANCE, Penetration.depth(deep, b, 0), 1e-9, where);
      }
    }
    assertTrue(clear > 10 && clear < 90, "clear " + clear);
  }

  @Test
  void of_refusesWhatIsNoMotion() {
    Body board = box("board", 0, 0, 0, 100, 50, 18);
    assertThrows(SolidException.class, () -> new Slide(Vec.ZERO, 0, 1, 0));
    assertThrows(SolidException.class, () -> new Slide(Axis.X.unit(), 0, Double.NaN, 0));
    assertThrows(SolidException.class, () -> new Turn(Vec.ZERO, Vec.ZERO, 0, 1, 0));
    Slide slide = new Slide(Axis.X.unit(), 0, 1, 0);
    assertThrows(
        SolidException.class, () -> Sweep.of(slide, List.of(board), List.of(board), Set.of(), 0));
  }
}
