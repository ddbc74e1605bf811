package sawstead.drawing.page;

/**
 * The colours of a drawing, as six hexadecimal digits; a shape always says the same beside them.
 */
public enum Ink {
  BIRCH("f4e6c8"),
  CHALK("ffffff"),
  DUST("e9e7e2"),
  INK("2a2521"),
  FAINT("6b645c"),
  COBALT("1d4e9e"),
  OCHRE("8a5a00"),
  LICHEN("dde6cf"),
  MOSS("3f6212"),
  VERMILION("b3261e");

  private final String hex;

  Ink(String hex) {
    this.hex = hex;
  }

  /** Six hexadecimal digits. */
  public String hex() {
    return hex;
  }

  /** Red, green and blue, 0 to 1. */
  float[] parts() {
    int rgb = Integer.parseInt(hex, 16);
    return new float[] {(rgb >> 16) / 255f, (rgb >> 8 & 255) / 255f, (rgb & 255) / 255f};
  }
}
