package sawstead.joinery;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import sawstead.solid.Axis;
import sawstead.solid.Bore;
import sawstead.solid.Box;
import sawstead.solid.Face;
import sawstead.solid.Opening;
import sawstead.solid.Outline;
import sawstead.solid.Recess;
import sawstead.solid.Vec;

class BoardTest {
  private static final Box BOX = new Box(new Vec(10, -20, 30), new Vec(410, 280, 48));

  @Test
  void spanning_fillsItsBoxForEveryWayToLay() {
    for (Axis through : Axis.values()) {
      for (Axis grain : Axis.values()) {
        for (boolean plus : new boolean[] {true, false}) {
          if (grain != through) {
            Board board = Board.spanning("b", "ply", 600, BOX, through, plus, grain);
            assertNear(BOX, board.box());
            assertNear(BOX, board.body().box());
            assertEquals(BOX.size().along(through), board.thickness());
            assertEquals(BOX.size().along(grain), board.panel().length());
            assertEquals(through, board.through());
            assertEquals(grain, board.grain());
            assertEquals(1, board.placement().u().along(grain));
            assertEquals(plus ? 1 : -1, board.placement().w().along(through));
            Vec front = board.placement().apply(new Vec(0, 0, board.thickness()));
            assertEquals((plus ? BOX.high() : BOX.low()).along(through), front.along(through));
          }
        }
      }
    }
  }

  @Test
  void spanning_refusesGrainThroughTheThickness() {
    assertThrows(
        JoineryException.class, () -> Board.spanning("b", "ply", 600, BOX, Axis.Z, true, Axis.Z));
  }

  @Test
  void spanning_refusesABoxWithoutThickness() {
    Box flat = new Box(new Vec(0, 0, 0), new Vec(100, 100, 0));
    assertThrows(
        JoineryException.class, () -> Board.spanning("b", "ply", 600, flat, Axis.Z, true, Axis.X));
  }

  /** REF-PLY-10: a sheet of 1220 x 2440 x 18 mm at 685 kg/m3 has 36.70 kg. */
  @Test
  void mass_ofAWholeSheet() {
    Board sheet = Bench.board("sheet", Axis.Z, 0, 0, 0, 2440, 1220, 18);
    assertEquals(36.70, sheet.mass(), 0.005);
  }

  @Test
  void local_comesBackToTheStation() {
    Board board = Board.spanning("b", "ply", 600, BOX, Axis.Y, false, Axis.Z);
    Vec point = new Vec(17, 3, 33);
    assertEquals(0, board.placement().apply(board.local(point)).distance(point), 1e-9);
  }

  @Test
  void extended_growsAtTheEndAskedFor() {
    for (Axis through : Axis.values()) {
      for (boolean front : new boolean[] {true, false}) {
        for (Axis axis : Axis.values()) {
          for (boolean plus : new boolean[] {true, false}) {
            Axis grain = through == Axis.X ? Axis.Y : Axis.X;
            Board board = Board.spanning("b", "ply", 600, BOX, through, front, grain);
            if (axis == through) {
              assertThrows(JoineryException.class, () -> board.extended(axis, plus, 6));
            } else {
              Box grown = board.extended(axis, plus, 6).box();
              Vec more = axis.unit().scale(6);
              assertNear(
                  plus
                      ? new Box(BOX.low(), BOX.high().plus(more))
                      : new Box(BOX.low().minus(more), BOX.high()),
                  grown);
            }
          }
        }
      }
    }
  }

  @Test
  void extended_refusesToLoseTheWholeLength() {
    Board board = Bench.board("b", Axis.Z, 0, 0, 0, 100, 50, 18);
    assertThrows(JoineryException.class, () -> board.extended(Axis.X, true, -100));
    assertEquals(1, board.extended(Axis.X, true, -99).box().size().x(), 1e-9);
  }

  @Test
  void cutBox_recessFromEitherFace() {
    Board board = Bench.board("b", Axis.Z, 0, 0, 100, 400, 300, 118);
    Box above = new Box(new Vec(100, 50, 109), new Vec(120, 200, 130));
    assertEquals(
        new Recess("groove", Outline.rectangle(100, 50, 120, 200), 9, Face.FRONT),
        board.cutBox(above, "groove").features().get(0));
    Box below = new Box(new Vec(100, 50, 90), new Vec(120, 200, 105));
    assertEquals(
        new Recess("relief", Outline.rectangle(100, 50, 120, 200), 5, Face.BACK),
        board.cutBox(below, "relief").features().get(0));
  }

  @Test
  void cutBox_opening_endsAtTheBoard() {
    Board board = Bench.board("b", Axis.Z, 0, 0, 100, 400, 300, 118);
    Box notch = new Box(new Vec(-50, -50, 100), new Vec(60, 40, 118));
    Board notched = board.cutBox(notch, "recess");
    assertEquals(new Opening(Outline.rectangle(0, 0, 60, 40)), notched.features().get(0));
    assertEquals((400.0 * 300 - 60 * 40) * 18, notched.panel().volume(), 1e-3);
  }

  /**
   * Volume that a box of air takes is that of the two boxes' common part, any way the board lies.
   */
  @Test
  void cutBox_takesTheCommonPart() {
    Box air = new Box(new Vec(100, -50, 35), new Vec(150, 100, 60));
    double common = 50 * 120 * 13;
    for (Axis through : Axis.values()) {
      for (boolean front : new boolean[] {true, false}) {
        Axis grain = through == Axis.Z ? Axis.X : Axis.Z;
        Board board = Board.spanning("b", "ply", 600, BOX, through, front, grain);
        if (through == Axis.X) {
          assertThrows(JoineryException.class, () -> board.cutBox(air, "groove"));
        } else {
          double left = board.cutBox(air, "groove").panel().volume();
          assertEquals(400.0 * 300 * 18 - common, left, 1e-2);
        }
      }
    }
  }

  @Test
  void cutBox_refusesAMissAndACavity() {
    Board board = Bench.board("b", Axis.Z, 0, 0, 0, 400, 300, 18);
    Box miss = new Box(new Vec(400, 0, 0), new Vec(500, 300, 18));
    assertThrows(JoineryException.class, () -> board.cutBox(miss, "groove"));
    Box cavity = new Box(new Vec(100, 100, 5), new Vec(200, 200, 12));
    assertThrows(JoineryException.class, () -> board.cutBox(cavity, "groove"));
  }

  @Test
  void bored_liesOnTheLine() {
    Board board = Board.spanning("b", "ply", 600, BOX, Axis.Z, false, Axis.Y);
    Board bored = board.bored(new Vec(110, 80, 999), Axis.Z, 64);
    Bore bore = (Bore) bored.features().get(0);
    assertTrue(bore.through());
    Vec centre = board.placement().apply(new Vec(bore.u(), bore.v(), 0));
    assertEquals(110, centre.x(), 1e-9);
    assertEquals(80, centre.y(), 1e-9);
    assertFalse(bored.body().contains(new Vec(110, 80, 39)));
    assertThrows(JoineryException.class, () -> board.bored(new Vec(110, 80, 0), Axis.X, 64));
    assertThrows(JoineryException.class, () -> board.bored(new Vec(0, 80, 0), Axis.Z, 64));
  }

  private static void assertNear(Box expected, Box found) {
    assertEquals(0, expected.low().distance(found.low()), 1e-6, () -> expected + " " + found);
    assertEquals(0, expected.high().distance(found.high()), 1e-6, () -> expected + " " + found);
  }
}
