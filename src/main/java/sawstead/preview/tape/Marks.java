package sawstead.preview.tape;

import java.util.ArrayList;
import java.util.List;
import sawstead.measure.LengthFormat;
import sawstead.measure.Unit;

/** Where the marks of a tape are and how tall. */
final class Marks {
  /** Nearest that two marks may be, pixels. */
  private static final double NEAREST = 5;

  private Marks() {}

  /**
   * A mark.
   *
   * @param at parameter
   * @param rank 0 with a number, 1 half, 2 the finest
   * @param number what stands at it; empty for none
   */
  record Mark(double at, int rank, String number) {}

  /**
   * The marks.
   *
   * @param pixels that the whole way takes
   * @param apart how far numbers have to be from each other, pixels
   */
  static List<Mark> of(Run run, Unit unit, double pixels, double apart) {
    double low = Math.min(run.from(), run.to());
    double high = Math.max(run.from(), run.to());
    double perPixel = (high - low) / Math.max(1, pixels);
    double base = run.scale() == Run.Scale.LENGTH && unit == Unit.INCH ? 25.4 : 1;
    double[] ladder =
        switch (run.scale()) {
          case LENGTH ->
              unit == Unit.INCH
                  ? new double[] {1. / 16, 1. / 8, 1. / 4, 1. / 2, 1, 2, 4, 6, 12, 24, 48, 96}
                  : new double[] {1, 5, 10, 50, 100, 200, 500, 1000, 2000, 5000};
          case ANGLE -> new double[] {1, 5, 15, 45, 90, 180, 360};
          case STEPS -> new double[] {0.25, 0.5, 1, 2, 5, 10, 20, 50, 100};
        };
    double fine = first(ladder, base, perPixel * NEAREST);
    double numbered =
        Math.max(
                run.scale() == Run.Scale.STEPS ? 1 : 0,
                first(ladder, base, perPixel * apart) / base)
            * base;
    List<Mark> marks = new ArrayList<>();
    for (long k = (long) Math.ceil(low / fine - 1e-9); k * fine <= high + 1e-9; k++) {
      double at = k * fine;
      boolean full = Math.abs(Math.IEEEremainder(at, numbered)) < fine / 4;
      boolean half = Math.abs(Math.IEEEremainder(at, numbered / 2)) < fine / 4;
      marks.add(new Mark(at, full ? 0 : half ? 1 : 2, full ? number(at, base) : ""));
    }
    return marks;
  }

  private static double first(double[] ladder, double base, double least) {
    for (double step : ladder) {
      if (step * base >= least) {
        return step * base;
      }
    }
    return ladder[ladder.length - 1] * base;
  }

  /** As a rule is numbered: inches with fractions, all else whole where it is. */
  private static String number(double at, double base) {
    if (base > 1) {
      return LengthFormat.inches(16).text(at);
    }
    double rounded = Math.rint(at * 16) / 16;
    return rounded == Math.rint(rounded) ? Long.toString((long) rounded) : Double.toString(rounded);
  }
}
