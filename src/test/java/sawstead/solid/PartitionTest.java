package sawstead.solid;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

class PartitionTest {
  @Test
  void partition_ofBoardIsOnePiece() {
    assertEquals(1, new Panel(Outline.rectangle(0, 0, 600, 300), 18).partition().size());
    assertEquals(1, Solids.cylinder(100, 20).partition().size());
  }

  /** Chains of edges between strips of a grid are joined too. */
  @Test
  void partition_ofGroovedBoardIsFewPieces() {
    Panel panel =
        new Panel(
            Outline.rectangle(0, 0, 600, 300),
            18,
            List.of(
                new Recess("groove", Outline.bar(0, 100, 600, 100, 20), 9, Face.FRONT),
                new Recess("groove", Outline.bar(0, 200, 600, 200, 20), 9, Face.FRONT)));
    assertTrue(panel.partition().size() <= 5, "pieces " + panel.partition().size());
  }

  /** Pieces are disjoint: no two share volume, and each lies in the cover. */
  @Test
  void partition_piecesShareNothing() {
    for (long seed = 700; seed < 730; seed++) {
      List<Piece> pieces = new RandomSolids(seed).soundPanel().partition();
      for (int i = 0; i < Math.min(pieces.size(), 60); i++) {
        for (int j = i + 1; j < Math.min(pieces.size(), 60); j++) {
          assertEquals(0, Pieces.shared(pieces.get(i), pieces.get(j)), 1e-7, "seed " + seed);
        }
      }
    }
  }

  /** Every corner lies within every plane of its piece. */
  @Test
  void partition_piecesAreConvex() {
    for (long seed = 730; seed < 760; seed++) {
      for (Piece piece : new RandomSolids(seed).soundPanel().partition()) {
        for (int i = 0; i < piece.vertexCount(); i++) {
          assertTrue(piece.contains(piece.vertex(i), 2 * Slabs.GRID), "seed " + seed);
        }
      }
    }
  }
}
