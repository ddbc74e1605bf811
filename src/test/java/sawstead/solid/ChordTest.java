package sawstead.solid;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

class ChordTest {
  private static final Panel GROOVED =
      new Panel(
          Outline.rectangle(0, 0, 600, 300),
          18,
          List.of(
              new Recess("groove", Outline.bar(0, 150, 600, 150, 20), 9, Face.FRONT),
              Bore.through(100, 50, 64)));

  @Test
  void along_lineAcrossGroove() {
    Body board = new Body("board", GROOVED, Placement.identity());
    List<Chord> chords = Chord.along(board, new Vec(300, -10, 12), new Vec(0, 2, 0));
    assertEquals(2, chords.size());
    assertChord(10, 150, chords.get(0), 1e-9);
    assertChord(170, 310, chords.get(1), 1e-9);
    List<Chord> below = Chord.along(board, new Vec(300, -10, 5), new Vec(0, 2, 0));
    assertEquals(1, below.size());
    assertChord(10, 310, below.get(0), 1e-9);
  }

  @Test
  void along_lineThroughHole() {
    Body board = new Body("board", GROOVED, Placement.identity());
    assertTrue(Chord.along(board, new Vec(100, 50, 0), Axis.Z.unit()).isEmpty());
    List<Chord> across = Chord.along(board, new Vec(0, 50, 5), Axis.X.unit());
    assertChord(0, 68, across.get(0), Outline.ARC_ERROR);
    assertChord(132, 600, across.get(1), Outline.ARC_ERROR);
  }

  @Test
  void along_turnsWithTheBody() {
    RandomSolids random = new RandomSolids(160);
    for (int i = 0; i < 50; i++) {
      Body board = new Body("board", GROOVED, random.placement(100));
      Vec from = board.placement().apply(new Vec(300, -10, 12));
      List<Chord> chords = Chord.along(board, from, board.placement().turn(Axis.Y.unit()));
      assertEquals(2, chords.size(), "seed 160, case " + i);
      assertChord(170, 310, chords.get(1), 1e-9);
    }
  }

  /** The slow rival asks point by point. */
  @Test
  void along_agreesWithPoints() {
    RandomSolids random = new RandomSolids(161);
    for (int i = 0; i < 60; i++) {
      Body body = new Body("a", random.soundPanel(), Placement.identity());
      Vec from = new Vec(random.between(0, 400), random.between(0, 300), random.between(0, 18));
      Vec to = new Vec(random.between(0, 400), random.between(0, 300), random.between(0, 18));
      Vec unit = to.minus(from).unit();
      List<Chord> chords = Chord.along(body, from, to.minus(from));
      for (int k = 0; k < 200; k++) {
        double t = random.between(-300, 300);
        boolean in = chords.stream().anyMatch(c -> c.from() <= t && t <= c.to());
        boolean near =
            chords.stream()
                .anyMatch(c -> Math.abs(c.from() - t) < 1e-3 || Math.abs(c.to() - t) < 1e-3);
        if (!near) {
          Vec p = from.plus(unit.scale(t));
          assertEquals(body.contains(p, 0), in, "seed 161, case " + i + ", t " + t);
        }
      }
    }
  }

  private static void assertChord(double from, double to, Chord chord, double tolerance) {
    assertEquals(from, chord.from(), tolerance);
    assertEquals(to, chord.to(), tolerance);
    assertEquals(to - from, chord.length(), 2 * tolerance);
  }
}
