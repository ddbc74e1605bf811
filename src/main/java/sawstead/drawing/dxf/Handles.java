package sawstead.drawing.dxf;

import java.util.Locale;

/** Gives out the numbers by which records of one file refer to each other. */
final class Handles {
  private int next = 1;

  String next() {
    return Integer.toHexString(next++).toUpperCase(Locale.ROOT);
  }

  /** A handle greater than all given out; later editors start from it. */
  String seed() {
    return Integer.toHexString(next).toUpperCase(Locale.ROOT);
  }
}
