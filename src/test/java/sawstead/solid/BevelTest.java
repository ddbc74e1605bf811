package sawstead.solid;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

class BevelTest {
  private static final Outline BOARD = Outline.rectangle(0, 0, 600, 300);
  private static final double WHOLE = 600.0 * 300 * 18;

  private static Panel board(Feature... features) {
    return new Panel(BOARD, 18, List.of(features));
  }

  private static void assertVolume(double expected, Panel panel) {
    assertEquals(expected, panel.volume(), expected * 1e-12);
    double pieces = panel.partition().stream().mapToDouble(Piece::volume).sum();
    assertEquals(expected, pieces, expected * 1e-12);
    assertTrue(panel.mesh().isClosedAndOriented());
  }

  /** A chamfer takes a triangular prism. */
  @Test
  void volume_ofChamferOnEitherFace() {
    assertVolume(WHOLE - 600 * 5 * 4 / 2.0, board(Bevel.alongEdge(BOARD, 0, Face.FRONT, 5, 4)));
    assertVolume(WHOLE - 300 * 5 * 4 / 2.0, board(Bevel.alongEdge(BOARD, 1, Face.BACK, 5, 4)));
  }

  @Test
  void volume_ofBevelOverTheWholeEdge() {
    Panel panel = board(Bevel.alongEdge(BOARD, 0, Face.FRONT, 18, 18));
    assertVolume(WHOLE - 600 * 18 * 18 / 2.0, panel);
    assertEquals(new Box(Vec.ZERO, new Vec(600, 300, 18)), panel.box());
  }

  /** Two chamfers c meet at a corner: the triangles overlap in a pyramid of volume c^3 / 3. */
  @Test
  void volume_ofChamfersMeetingAtCorner() {
    double c = 6;
    assertVolume(
        WHOLE - 600 * c * c / 2 - 300 * c * c / 2 + c * c * c / 3,
        board(
            Bevel.alongEdge(BOARD, 0, Face.FRONT, c, c),
            Bevel.alongEdge(BOARD, 1, Face.FRONT, c, c)));
  }

  @Test
  void volume_ofChamferAcrossGroove() {
    // A groove along v, 20 wide and 9 deep, has taken the front where the chamfer (4 deep) runs.
    assertVolume(
        WHOLE - 300 * 20 * 9 - (600 - 20) * 4 * 4 / 2.0,
        board(
            new Recess("groove", Outline.bar(200, 0, 200, 300, 20), 9, Face.FRONT),
            Bevel.alongEdge(BOARD, 0, Face.FRONT, 4, 4)));
  }

  /** The same cut twice, and cuts that differ by less than any tolerance, change nothing. */
  @Test
  void volume_ofRepeatedBevel() {
    Bevel bevel = Bevel.alongEdge(BOARD, 0, Face.FRONT, 5, 4);
    Bevel almost = Bevel.alongEdge(BOARD, 0, Face.FRONT, 5 + 1e-9, 4);
    assertEquals(board(bevel).volume(), board(bevel, bevel).volume());
    assertEquals(board(bevel).volume(), board(bevel, almost).volume(), 1e-3);
    assertTrue(board(bevel, almost).mesh().isClosedAndOriented());
  }

  /**
   * Cuts from both faces 400 across a board of 300: what lies below the one, 18 x / 400, and above
   * the other, 18 - 18 x / 400, begins at x = 200.
   */
  @Test
  void volume_ofBevelsFromBothFaces() {
    double area = 18.0 / 400 * (300 * 300 - 200 * 200) - 18 * (300 - 200);
    assertVolume(
        600 * area,
        board(
            Bevel.alongEdge(BOARD, 0, Face.FRONT, 400, 18),
            Bevel.alongEdge(BOARD, 0, Face.BACK, 400, 18)));
  }

  @Test
  void volume_refusesBevelsThatLeaveNothing() {
    Panel gone =
        board(
            Bevel.alongEdge(BOARD, 0, Face.FRONT, 1e5, 18),
            Bevel.alongEdge(BOARD, 0, Face.BACK, 1e5, 18));
    assertThrows(SolidException.class, gone::mesh);
    assertThrows(SolidException.class, gone::partition);
  }

  @Test
  void new_refusesWhatCannotBeCut() {
    assertThrows(SolidException.class, () -> board(Bevel.alongEdge(BOARD, 0, Face.FRONT, 5, 19)));
    assertThrows(SolidException.class, () -> Bevel.alongEdge(BOARD, 7, Face.FRONT, 5, 5));
    Outline round = BOARD.rounded(20);
    assertThrows(SolidException.class, () -> Bevel.alongEdge(round, 0, Face.FRONT, 5, 5));
    Outline angle = Outline.polygon(0, 0, 100, 0, 100, 20, 20, 20, 20, 100, 0, 100);
    Bevel inner = Bevel.alongEdge(angle, 2, Face.FRONT, 5, 5);
    String message =
        assertThrows(SolidException.class, () -> new Panel(angle, 18, List.of(inner))).getMessage();
    assertTrue(message.contains("whole panel on one side"), message);
  }
}
