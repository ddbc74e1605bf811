package sawstead.layout.packing;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/** Small random problems from a seed. */
final class RandomProblems {
  private RandomProblems() {}

  static PackingProblem tiny(long seed, boolean square) {
    SplittableRandom random = new SplittableRandom(seed);
    int length = 6 + random.nextInt(7);
    int width = square ? length : 5 + random.nextInt(6);
    List<PieceKind> pieces = new ArrayList<>();
    int n = 4 + random.nextInt(3);
    for (int i = 0; i < n; i++) {
      int l = 1 + random.nextInt(length);
      int w = 1 + random.nextInt(width);
      pieces.add(new PieceKind(l, w, l != w && random.nextBoolean(), 1));
    }
    return new PackingProblem(
        List.of(new SheetKind(length, width, SheetKind.ENDLESS, true, 1)), pieces);
  }
}
