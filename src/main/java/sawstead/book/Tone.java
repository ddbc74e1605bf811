package sawstead.book;

import sawstead.drawing.page.Ink;

/** How a thing is drawn, by its part in the step. */
enum Tone {
  /** It stands already. */
  STANDING(0xf3f1ec, Ink.FAINT, 0.35),
  /** It stands already, and is owned or bought and not made. */
  OWNED(0xdfe3e6, Ink.FAINT, 0.35),
  /** It comes in this step. */
  COMING(0xf0d9a6, Ink.INK, 0.75),
  /** It comes in this step, and is owned or bought and not made. */
  COMING_OWNED(0xb9c4cb, Ink.INK, 0.75);

  private final int rgb;
  private final Ink line;
  private final double weight;

  Tone(int rgb, Ink line, double weight) {
    this.rgb = rgb;
    this.line = line;
    this.weight = weight;
  }

  Ink line() {
    return line;
  }

  /** Width of its lines, points. */
  double weight() {
    return weight;
  }

  /** The colour of a face, {@code 0xRRGGBB}: the less it is lit the darker. */
  int lit(double share) {
    int red = (int) Math.round((rgb >> 16 & 255) * share);
    int green = (int) Math.round((rgb >> 8 & 255) * share);
    int blue = (int) Math.round((rgb & 255) * share);
    return red << 16 | green << 8 | blue;
  }
}
