package sawstead.solid;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.BitSet;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CoverTest {
  /** Union of cover = union of partition, judged by points. */
  @ParameterizedTest
  @ValueSource(longs = {60, 61, 62, 63})
  void cover_isTheSameSolidAsThePartition(long seed) {
    RandomSolids random = new RandomSolids(seed);
    double near = 4 * Cover.SLACK;
    for (int i = 0; i < 120; i++) {
      Panel panel = random.soundPanel();
      List<Piece> cover = panel.cover();
      List<Piece> partition = panel.partition();
      for (int k = 0; k < 60; k++) {
        Vec p = new Vec(random.between(-20, 420), random.between(-20, 320), random.between(0, 18));
        boolean covered = cover.stream().anyMatch(piece -> piece.contains(p, 0));
        String at = "seed " + seed + ", case " + i + ", " + p;
        if (covered) {
          assertTrue(partition.stream().anyMatch(piece -> piece.contains(p, near)), at);
        } else {
          assertTrue(partition.stream().noneMatch(piece -> piece.contains(p, -near)), at);
        }
      }
      for (Piece piece : partition) {
        Vec centre = piece.box().centre();
        assertTrue(
            !piece.contains(centre, -near) || cover.stream().anyMatch(c -> c.contains(centre, 0)),
            "seed " + seed + ", case " + i);
      }
    }
  }

  @Test
  void cover_ofPlainBoardIsOnePiece() {
    assertEquals(1, new Panel(Outline.rectangle(0, 0, 600, 300), 18).cover().size());
    assertEquals(1, Solids.cylinder(100, 20).cover().size());
    assertEquals(1, new Panel(Outline.rectangle(0, 0, 600, 300).rounded(30), 18).cover().size());
  }

  /** A groove leaves the floor as one whole board, and a full block on each side. */
  @Test
  void cover_ofGroovedBoardIsThreePieces() {
    Panel panel =
        new Panel(
            Outline.rectangle(0, 0, 600, 300),
            18,
            List.of(new Recess("groove", Outline.bar(0, 150, 600, 150, 20), 9, Face.FRONT)));
    List<Piece> cover = panel.cover();
    assertEquals(3, cover.size());
    assertTrue(cover.stream().anyMatch(p -> Math.abs(p.volume() - 600 * 300 * 9) < 1e-3));
  }

  /** Pieces are no thinner than 0.1 mm where the solid is not. */
  @Test
  void cover_ofNotchedBoardsHasNoThinPieces() {
    RandomSolids random = new RandomSolids(66);
    for (int i = 0; i < 200; i++) {
      double u = random.between(50, 500);
      double v = random.between(50, 250);
      // Corners of the two openings lie nearly in line, where triangles are slivers.
      Panel panel =
          new Panel(
              Outline.rectangle(0, 0, 600, 300),
              18,
              List.of(
                  new Opening(Outline.rectangle(u, v, u + 30, v + 20)),
                  new Opening(
                      Outline.rectangle(u + 50, v + random.between(-0.05, 0.05), u + 70, 320)),
                  new Recess("groove", Outline.bar(0, v, 600, v, 5), 6, Face.FRONT)));
      for (Piece piece : panel.cover()) {
        assertTrue(thickness(piece) > Cover.THIN, "seed 66, case " + i + " " + thickness(piece));
      }
    }
  }

  /** The least extent square to any of its faces. */
  private static double thickness(Piece piece) {
    double least = Double.POSITIVE_INFINITY;
    for (int f = 0; f < piece.planes.length; f += 4) {
      double low = Double.POSITIVE_INFINITY;
      for (int i = 0; i < piece.vertexCount(); i++) {
        Vec p = piece.vertex(i);
        low =
            Math.min(
                low,
                piece.planes[f] * p.x()
                    + piece.planes[f + 1] * p.y()
                    + piece.planes[f + 2] * p.z());
      }
      least = Math.min(least, piece.planes[f + 3] - low);
    }
    return least;
  }

  @Test
  void filledCover_leavesOutRoundHolesOnly() {
    Panel panel =
        new Panel(
            Outline.rectangle(0, 0, 600, 300),
            18,
            List.of(
                Bore.through(100, 100, 64),
                new Opening(Outline.circle(400, 100, 90)),
                new Recess("groove", Outline.bar(0, 150, 600, 150, 20), 9, Face.FRONT)));
    assertEquals(3, Shape.of(panel).cover(new BitSet()).size());
    assertTrue(panel.cover().size() > 10);
  }
}
