package sawstead.joinery;

/**
 * A stretch of a line parallel to a station axis.
 *
 * @param from least coordinate along that axis, mm
 * @param to greatest coordinate, mm
 */
public record Stretch(double from, double to) {
  /** Refuses a stretch that runs backwards. */
  public Stretch {
    if (!(from <= to)) {
      throw new JoineryException("a stretch needs from <= to, found " + from + " to " + to);
    }
  }

  /** Its length, mm. */
  public double length() {
    return to - from;
  }
}
