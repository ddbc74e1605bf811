package sawstead.solid;

/**
 * A straight motion.
 *
 * @param direction kept at length one
 * @param from first parameter, mm
 * @param to last parameter, mm; may be less than {@code from}
 * @param rest parameter of the rest state, mm
 */
public record Slide(Vec direction, double from, double to, double rest) implements Motion {
  /** Refuses a direction without length and limits that are no numbers. */
  public Slide {
    direction = direction.unit();
    Motion.demandRange(from, to, rest);
  }

  @Override
  public Placement at(double parameter) {
    return Placement.at(direction.scale(parameter - rest));
  }

  @Override
  public PairSweep sweep(double tolerance) {
    return new SlideSweep(this, tolerance);
  }
}
