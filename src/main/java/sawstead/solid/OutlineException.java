package sawstead.solid;

import java.util.Optional;

/** Refuses an outline that encloses no area, crosses itself, or holds a number that is none. */
public final class OutlineException extends SolidException {
  private static final long serialVersionUID = 1L;

  private final double u;
  private final double v;

  /**
   * A refusal in plain words.
   *
   * @param message what is wrong, and where on the outline (u, v in mm)
   */
  public OutlineException(String message) {
    this(message, Double.NaN, Double.NaN);
  }

  private OutlineException(String message, double u, double v) {
    super(message);
    this.u = u;
    this.v = v;
  }

  /** Refuses a ring that touches or crosses itself at a point, mm. */
  static OutlineException crossing(double u, double v) {
    return new OutlineException(
        "an outline must not touch or cross itself, but this one does at u = "
            + u
            + ", v = "
            + v
            + " mm",
        u,
        v);
  }

  /** Where the ring touches or crosses itself: u and v, mm; empty for any other fault. */
  public Optional<double[]> crossing() {
    return Double.isNaN(u) ? Optional.empty() : Optional.of(new double[] {u, v});
  }
}
