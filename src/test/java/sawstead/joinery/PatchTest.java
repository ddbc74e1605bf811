package sawstead.joinery;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import sawstead.solid.Axis;
import sawstead.solid.Box;
import sawstead.solid.Face;
import sawstead.solid.Outline;
import sawstead.solid.Vec;

class PatchTest {
  private final Board top = Bench.board("top", Axis.Z, 0, 0, 500, 600, 500, 518);
  private final Board leg = Bench.board("leg", Axis.Y, 20, 40, 0, 110, 58, 500);

  @Test
  void between_edgeUnderFace() {
    Patch patch = Patch.between(leg, top).orElseThrow();
    assertEquals(Axis.Z, patch.normal());
    assertTrue(patch.towardsPlus());
    assertEquals(new Box(new Vec(20, 40, 500), new Vec(110, 58, 500)), patch.rectangle());
    assertEquals(Optional.empty(), patch.aFace());
    assertEquals(Optional.of(Face.BACK), patch.bFace());
    assertEquals(90, patch.length(), 1e-9);
    assertEquals(18, patch.width(), 1e-9);
    assertEquals(Axis.X, patch.longAxis());
  }

  @Test
  void between_isTheReverseSeenFromTheOther() {
    assertEquals(
        Patch.between(top, leg).orElseThrow(), Patch.between(leg, top).orElseThrow().reversed());
  }

  @Test
  void between_nothingForALineAGapOrAnOverlap() {
    assertEquals(
        Optional.empty(), Patch.between(Bench.board("c", Axis.Z, 600, 500, 0, 700, 600, 18), top));
    assertEquals(
        Optional.empty(), Patch.between(Bench.board("c", Axis.Z, 0, 500, 482, 600, 600, 500), top));
    assertEquals(
        Optional.empty(), Patch.between(Bench.board("c", Axis.Z, 0, 0, 400, 600, 500, 499.9), top));
    assertEquals(
        Optional.empty(), Patch.between(Bench.board("c", Axis.Z, 0, 0, 490, 600, 500, 508), top));
  }

  @Test
  void between_touchesToAMillionth() {
    assertTrue(
        Patch.between(Bench.board("c", Axis.Z, 0, 0, 400, 600, 500, 500 - 5e-7), top).isPresent());
  }

  /** Joints are made on rectangles: a board that is turned or shaped has no patch. */
  @Test
  void between_nothingForTurnedAndShapedBoards() {
    assertEquals(Optional.empty(), Patch.between(changed(leg, leg.outline(), 10), top));
    Outline cutCorner = Outline.polygon(0, 0, 90, 0, 90, 500, 40, 500, 0, 460);
    assertEquals(Optional.empty(), Patch.between(changed(leg, cutCorner, 0), top));
    assertTrue(Patch.between(changed(leg, leg.outline(), 0), top).isPresent());
  }

  private static Board changed(Board board, Outline outline, double degrees) {
    return new Board(
        board.id(),
        board.stock(),
        board.thickness(),
        board.density(),
        outline,
        board.features(),
        board.placement().turned(new Vec(65, 49, 0), Axis.Z.unit(), degrees));
  }
}
