package sawstead.solid;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Volumes of panels against closed formulas; every figure is worked out in the test. */
class PanelTest {
  private static final Outline BOARD = Outline.rectangle(0, 0, 600, 300);
  private static final double WHOLE = 600.0 * 300 * 18;

  private static Panel board(Feature... features) {
    return new Panel(BOARD, 18, List.of(features));
  }

  private static Recess groove(Face face, double depth, double... bar) {
    return new Recess("groove", Outline.bar(bar[0], bar[1], bar[2], bar[3], bar[4]), depth, face);
  }

  private static void assertVolume(double expected, Panel panel) {
    assertEquals(expected, panel.volume(), expected * 1e-12);
    assertEquals(expected, panel.mesh().volume(), expected * 1e-12);
    assertTrue(panel.mesh().isClosedAndOriented());
  }

  @Test
  void volume_ofPlainBoard() {
    Panel panel = board();
    assertVolume(WHOLE, panel);
    assertEquals(12, panel.mesh().triangleCount());
    assertEquals(new Vec(300, 150, 9), panel.centroid());
    assertEquals(new Box(Vec.ZERO, new Vec(600, 300, 18)), panel.box());
    assertEquals(600, panel.length());
    assertEquals(300, panel.width());
  }

  @Test
  void volume_ofGroovesCrossingAtDifferentDepths() {
    // Along: 600 x 20 x 9 from the front; across: 300 x 12 x 5 from the front; the crossing counts
    // once, with the deeper cut.
    double along = 600 * 20 * 9;
    double across = 300 * 12 * 5;
    double both = 20 * 12 * 5;
    assertVolume(
        WHOLE - along - across + both,
        board(
            groove(Face.FRONT, 9, 0, 150, 600, 150, 20),
            groove(Face.FRONT, 5, 200, 0, 200, 300, 12)));
  }

  @Test
  void volume_ofGroovesFromEitherFaceThatDoNotMeet() {
    assertVolume(
        WHOLE - 600 * 20 * 9 - 300 * 12 * 5,
        board(
            groove(Face.FRONT, 9, 0, 150, 600, 150, 20),
            groove(Face.BACK, 5, 200, 0, 200, 300, 12)));
  }

  @Test
  void volume_ofOppositeRecessesThatMeet() {
    // 9 from the front and 10 from the back: a hole 20 x 12 where they cross, 1 mm counted twice.
    double along = 600 * 20 * 9;
    double across = 300 * 12 * 10;
    double twice = 20 * 12 * 1;
    assertVolume(
        WHOLE - along - across + twice,
        board(
            groove(Face.FRONT, 9, 0, 150, 600, 150, 20),
            groove(Face.BACK, 10, 200, 0, 200, 300, 12)));
  }

  @Test
  void volume_ofRecessBeyondTheOutline() {
    assertVolume(WHOLE - 600 * 10 * 9, board(groove(Face.FRONT, 9, -50, 300, 700, 300, 20)));
  }

  @Test
  void volume_ofSlantedGroove() {
    // A bar at 45 degrees across a strip 300 wide: area width x 300 x sqrt 2.
    assertEquals(
        WHOLE - 20 * 300 * Math.sqrt(2) * 9,
        board(groove(Face.FRONT, 9, 100, -50, 500, 350, 20)).volume(),
        1e-2);
  }

  @Test
  void volumeExact_ofBores() {
    Panel panel = board(Bore.through(100, 100, 64), new Bore(300, 100, 35, 12, Face.BACK));
    double exact = WHOLE - Math.PI * 32 * 32 * 18 - Math.PI * 17.5 * 17.5 * 12;
    assertEquals(exact, panel.volumeExact(), 1e-6);
    assertTrue(panel.volume() > exact, "polygons add material");
    assertEquals(exact, panel.volume(), Math.PI * (64 * 18 + 35 * 12) * Outline.ARC_ERROR);
  }

  @Test
  void volumeExact_ofBoreOnTheEdge() {
    // Half of the circle lies on the board.
    Panel panel = board(Bore.through(300, 0, 64));
    assertEquals(WHOLE - Math.PI * 32 * 32 * 18 / 2, panel.volumeExact(), 1e-2);
    assertTrue(panel.mesh().isClosedAndOriented());
  }

  @Test
  void volumeExact_ofRoundedBoard() {
    Panel panel = new Panel(BOARD.rounded(20), 18);
    assertEquals(WHOLE - (4 - Math.PI) * 400 * 18, panel.volumeExact(), 1e-4);
    assertTrue(panel.volume() > panel.volumeExact(), "polygons add material");
  }

  @Test
  void volumeExact_ofNestedAndRepeatedBores() {
    Panel panel =
        board(
            Bore.through(100, 100, 20),
            Bore.through(100, 100, 20),
            new Bore(100, 100, 50, 6, Face.FRONT));
    double exact = WHOLE - Math.PI * 100 * 18 - Math.PI * (625 - 100) * 6;
    assertEquals(exact, panel.volumeExact(), 1e-6);
  }

  @Test
  void new_refusesFeaturesThatDoNotFit() {
    refuses("goes through", () -> board(groove(Face.FRONT, 18, 0, 150, 600, 150, 20)));
    refuses("goes through", () -> board(new Bore(10, 10, 5, 18, Face.FRONT)));
    refuses("more than 0", () -> board(groove(Face.FRONT, 0, 0, 150, 600, 150, 20)));
    refuses("more than 0", () -> board(new Bore(10, 10, 5, -1, Face.FRONT)));
    refuses("thickness", () -> new Panel(BOARD, 0));
    refuses("thickness", () -> new Panel(BOARD, Double.NaN));
    refuses("is one of", () -> new Recess("hole", BOARD, 3, Face.FRONT));
  }

  @Test
  void volume_refusesPanelEatenByItsFeatures() {
    Panel eaten = board(new Opening(Outline.rectangle(-10, -10, 700, 400)));
    refuses("nothing is left", eaten::volume);
    refuses("nothing is left", eaten::mesh);
    Panel bothFaces =
        board(
            new Recess("recess", Outline.rectangle(-10, -10, 700, 400), 10, Face.FRONT),
            new Recess("recess", Outline.rectangle(-10, -10, 700, 400), 10, Face.BACK));
    refuses("nothing is left", bothFaces::partition);
  }

  private static void refuses(String part, org.junit.jupiter.api.function.Executable making) {
    String message = assertThrows(SolidException.class, making).getMessage();
    assertTrue(message.contains(part), message);
  }

  @Test
  void volume_doesNotDependOnTheOrderOfFeatures() {
    Feature a = groove(Face.FRONT, 9, 0, 150, 600, 150, 20);
    Feature b = Bore.through(100, 155, 30);
    assertEquals(board(a, b).volume(), board(b, a).volume(), 1e-6);
    assertNotEquals(board(a, b), board(b, a));
    assertEquals(board(a, b), board(a, b));
  }

  @Test
  void uncut_namesWhatTheSolidStillContains() {
    Panel panel =
        board(
            new PocketBore(new Vec(30, 30, 18), new Vec(1, 0, -0.27), 9.5, 20),
            new PocketBore(new Vec(30, 90, 18), new Vec(1, 0, -0.27), 9.5, 20),
            new EdgeBore(new Vec(0, 150, 9), Axis.X.unit(), 5, 40),
            new Mark("this side up", Face.FRONT, List.of(new Mark.Stroke(0, 0, 10, 10))));
    assertEquals(List.of("pocket-bore", "edge-bore"), panel.uncut());
    assertVolume(WHOLE, panel);
  }

  /** Tiny and huge on purpose: 0.01 mm of a 90 m board. */
  @Test
  void volume_ofTinyFeatureOnHugeBoard() {
    Panel panel =
        new Panel(
            Outline.rectangle(0, 0, 90_000, 90_000),
            18,
            List.of(new Opening(Outline.rectangle(89_999.99, 10, 90_001, 20))));
    assertVolume(
        90_000.0 * 90_000 * 18 - Slabs.snap(10) * (90_000 - Slabs.snap(89_999.99)) * 18, panel);
  }
}
