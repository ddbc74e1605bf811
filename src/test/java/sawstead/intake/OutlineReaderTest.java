package sawstead.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Judged by a slow and obvious rival: every pair of edges that are no neighbours. */
class OutlineReaderTest {

  @Test
  void outline_isRefusedExactlyWhenTwoEdgesMeet() {
    long seed = 20260107L;
    Random random = new Random(seed);
    int crossing = 0;
    for (int round = 0; round < 400; round++) {
      int[][] corners = new int[3 + random.nextInt(4)][2];
      for (int[] corner : corners) {
        corner[0] = random.nextInt(1000);
        corner[1] = random.nextInt(1000);
      }
      boolean meets = twoEdgesMeet(corners);
      crossing += meets ? 1 : 0;
      String text = text(corners);
      List<BriefProblem> problems =
          Briefs.problems(
              Briefs.LEAST + "extras: [{id: a, stock: birch-18, outline: " + text + "}]\n");
      assertEquals(meets, !problems.isEmpty(), () -> "seed " + seed + ", " + text + problems);
    }
    assertTrue(crossing > 50 && crossing < 350);
  }

  private static String text(int[][] corners) {
    StringBuilder text = new StringBuilder("[");
    for (int[] corner : corners) {
      text.append(String.format(Locale.ROOT, "[%d, %d], ", corner[0], corner[1]));
    }
    return text.append("]").toString();
  }

  /** Exact in whole numbers. Random corners of this size are never three in a line at a corner. */
  private static boolean twoEdgesMeet(int[][] c) {
    int n = c.length;
    for (int i = 0; i < n; i++) {
      for (int j = i + 2; j < n; j++) {
        boolean neighbours = i == 0 && j == n - 1;
        if (!neighbours && meet(c[i], c[(i + 1) % n], c[j], c[(j + 1) % n])) {
          return true;
        }
      }
    }
    return false;
  }

  private static boolean meet(int[] a, int[] b, int[] c, int[] d) {
    return side(a, b, c) * side(a, b, d) <= 0 && side(c, d, a) * side(c, d, b) <= 0;
  }

  private static int side(int[] a, int[] b, int[] p) {
    long cross = (long) (b[0] - a[0]) * (p[1] - a[1]) - (long) (b[1] - a[1]) * (p[0] - a[0]);
    return Long.signum(cross);
  }
}
