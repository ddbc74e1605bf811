package sawstead.check;

/** What the numbers of a margin count. */
public enum Dimension {
  /** mm */
  LENGTH("mm"),
  /** kg */
  MASS("kg"),
  /** N */
  FORCE("N");

  private final String unit;

  Dimension(String unit) {
    this.unit = unit;
  }

  /** The unit of the report. */
  public String unit() {
    return unit;
  }
}
