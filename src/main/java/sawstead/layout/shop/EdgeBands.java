package sawstead.layout.shop;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import sawstead.joinery.Board;
import sawstead.solid.Box;
import sawstead.solid.Vec;

/**
 * Which edges of the panels show their plies, and so may be banded: those of which less than half
 * lies against another panel. A panel is asked as the rectangle around it; one that stands askew
 * shows all its edges.
 */
final class EdgeBands {
  /** A panel nearer than this lies against an edge, mm. */
  private static final double AGAINST = 0.3;

  /** Thinner panels are not banded, mm; common practice, no source. */
  private static final double THINNEST = 9;

  /** An edge hides when more of it than this is covered. */
  private static final double HIDDEN = 0.5;

  private final List<Board> boards;

  EdgeBands(Iterable<Board> boards) {
    List<Board> all = new ArrayList<>();
    boards.forEach(all::add);
    this.boards = List.copyOf(all);
  }

  /**
   * Edges of a panel that show.
   *
   * @param along how many of the two along the grain
   * @param across how many of the two across it
   * @param length of all of them together, mm
   */
  record Showing(int along, int across, double length) {
    /** {@code 2 along, 1 across}; empty for none. */
    String words() {
      List<String> words = new ArrayList<>();
      if (along > 0) {
        words.add(along + " along");
      }
      if (across > 0) {
        words.add(across + " across");
      }
      return String.join(", ", words);
    }
  }

  Showing of(Board board) {
    if (board.thickness() < THINNEST) {
      return new Showing(0, 0, 0);
    }
    Box plan = board.outline().bounds();
    Vec size = plan.size();
    int along = 0;
    int across = 0;
    for (double v : new double[] {plan.low().y(), plan.high().y()}) {
      along += shows(board, true, v) ? 1 : 0;
    }
    for (double u : new double[] {plan.low().x(), plan.high().x()}) {
      across += shows(board, false, u) ? 1 : 0;
    }
    return new Showing(along, across, along * size.x() + across * size.y());
  }

  /** Whether the edge at one value of v (along the grain) or u (across it) shows. */
  private boolean shows(Board board, boolean along, double at) {
    if (!board.isAxisParallel()) {
      return true;
    }
    Box plan = board.outline().bounds();
    double from = along ? plan.low().x() : plan.low().y();
    double to = along ? plan.high().x() : plan.high().y();
    List<double[]> covered = new ArrayList<>();
    for (Board other : boards) {
      if (other != board) {
        cover(board, other, along, at, covered);
      }
    }
    covered.sort(Comparator.comparingDouble(span -> span[0]));
    double sum = 0;
    double end = from;
    for (double[] span : covered) {
      double low = Math.max(end, span[0]);
      double high = Math.min(to, span[1]);
      sum += Math.max(0, high - low);
      end = Math.max(end, high);
    }
    return sum <= HIDDEN * (to - from);
  }

  /** From where to where along the edge another panel lies against half of its thickness. */
  private static void cover(
      Board board, Board other, boolean along, double at, List<double[]> covered) {
    Vec a = board.local(other.box().low());
    Vec b = board.local(other.box().high());
    double[] u = {Math.min(a.x(), b.x()), Math.max(a.x(), b.x())};
    double[] v = {Math.min(a.y(), b.y()), Math.max(a.y(), b.y())};
    double[] across = along ? v : u;
    double low = Math.max(0, Math.min(a.z(), b.z()));
    double high = Math.min(board.thickness(), Math.max(a.z(), b.z()));
    boolean touches = across[0] <= at + AGAINST && across[1] >= at - AGAINST;
    if (touches && high - low >= board.thickness() / 2) {
      covered.add(along ? u : v);
    }
  }
}
