package sawstead.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/** Random part lists of the size of a shop project, from a seed. */
final class RandomRequests {
  private RandomRequests() {}

  static CutRequest project(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    List<Board> boards = List.of(new Board("birch-18", 18, 685), new Board("birch-12", 12, 695));
    List<Part> parts = new ArrayList<>();
    int n = 4 + random.nextInt(12);
    for (int i = 0; i < n; i++) {
      double length = 60 + random.nextInt(i % 4 == 0 ? 1800 : 700) + random.nextInt(64) / 64.0;
      double width = 40 + random.nextInt(i % 3 == 0 ? 700 : 200) + random.nextInt(10) / 10.0;
      Grain grain = Grain.values()[random.nextInt(3)];
      if (grain == Grain.ACROSS && length > 1200) {
        grain = Grain.FREE;
      }
      String board = random.nextInt(4) == 0 ? "birch-12" : "birch-18";
      parts.add(
          new Part("p" + i, length, width, 1 + random.nextInt(6), grain, board, "seed " + seed));
    }
    double trim = random.nextInt(3) * 5;
    List<Stock> stock = new ArrayList<>();
    stock.add(Stock.sheet("full-18", "birch-18", 2440, 1220, trim));
    stock.add(Stock.sheet("full-12", "birch-12", 2440, 1220, trim));
    stock.add(new Stock("offcut", "birch-18", 900, 400, 1, 0, random.nextInt(2) * 4, true, "rack"));
    Kerfs kerfs = random.nextBoolean() ? Kerfs.both(3.2) : new Kerfs(1.8, 3.2);
    if (random.nextInt(4) == 0) {
      kerfs = new Kerfs(2.6, 2.2);
    }
    return new CutRequest(boards, parts, stock, kerfs, SawLimits.SMALL_SAW);
  }
}
