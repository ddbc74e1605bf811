package sawstead.layout.packing;

import java.util.SplittableRandom;

/** Takes a few pieces and rows out of a load, now and then a whole sheet. */
final class Ruin {
  /** One ruin in this many empties a whole sheet first. */
  private static final int WHOLE_SHEET = 32;

  private static final int ATTEMPTS = 20;
  private static final int COPY_WORK = 16;

  private final SplittableRandom random;
  private final boolean[] touched;
  private long work;

  Ruin(SplittableRandom random, boolean[] touched) {
    this.random = random;
    this.touched = touched;
  }

  /** Blocks copied so far, weighted as in {@link Refill#work()}. */
  long work() {
    return work;
  }

  /**
   * Takes out from one to a few pieces. Sheets not yet marked as touched are copied before they
   * change.
   *
   * @param most most pieces that it sets out to take; a row may bring more
   */
  void ruin(Load load, int most) {
    int wanted = 1 + random.nextInt(most);
    if (load.count > 0 && random.nextInt(WHOLE_SHEET) == 0) {
      int at = random.nextInt(load.count);
      load.close(at);
      touched[at] = touched[load.count];
    }
    int taken = 0;
    for (int attempt = 0; attempt < ATTEMPTS && taken < wanted && load.count > 0; attempt++) {
      taken += take(load, random.nextInt(load.count));
    }
  }

  /** Takes one piece, or one group with all in it, from a sheet. */
  private int take(Load load, int at) {
    OpenSheet sheet = load.sheets[at];
    int pieces = sheet.pieces.size();
    if (pieces == 0) {
      return 0;
    }
    if (!touched[at]) {
      sheet = sheet.copy();
      load.sheets[at] = sheet;
      touched[at] = true;
      work += COPY_WORK * (long) (sheet.groups.size() + pieces);
    }
    int pick = random.nextInt(pieces + sheet.groups.size());
    Block block = pick < pieces ? sheet.pieces.get(pick) : sheet.groups.get(pick - pieces);
    long free = sheet.free;
    sheet.remove(block, load.out);
    load.outArea += sheet.free - free;
    return pieces - sheet.pieces.size();
  }
}
