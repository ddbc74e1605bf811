package sawstead.solid;

/**
 * A rigid motion with one parameter. At {@code rest} the moving bodies are where the station has
 * them; at parameter p they have moved by (p - rest).
 */
public sealed interface Motion permits Slide, Turn {
  /** First parameter: mm of a slide, degrees of a turn. */
  double from();

  /** Last parameter: mm of a slide, degrees of a turn. */
  double to();

  /** Parameter at which the bodies are where the station has them. */
  double rest();

  /** Motion from the rest state to a parameter. */
  Placement at(double parameter);

  /** The way to follow pairs of pieces through this motion. */
  PairSweep sweep(double tolerance);

  /** Refuses a range that is none. */
  static void demandRange(double from, double to, double rest) {
    if (!Double.isFinite(from) || !Double.isFinite(to) || !Double.isFinite(rest)) {
      throw new SolidException(
          "a motion needs finite limits, found from " + from + " to " + to + " with rest " + rest);
    }
  }
}
