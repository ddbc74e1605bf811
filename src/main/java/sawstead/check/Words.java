package sawstead.check;

import java.util.List;
import java.util.Locale;
import sawstead.measure.LengthFormat;
import sawstead.measure.Mass;
import sawstead.measure.Unit;
import sawstead.solid.Vec;

/**
 * Amounts as the user reads them: in the unit of the brief, inches as fractions to 1/32 and what is
 * too small for a mark on a rule as thousandths; no number ever stands without its unit.
 *
 * @param unit of the brief
 */
public record Words(Unit unit) {
  /** Below this a length in inches would be rounded beyond use: three marks of 1/32 in, mm. */
  private static final double FINE = 2.4;

  /** What doubles may be off by, in marks. */
  private static final double ROUNDING = 1e-6;

  /** A length with its unit; {@code ~} in front when the fraction is only the nearest one. */
  public String length(double millimetres) {
    return LengthFormat.of(unit).near(millimetres);
  }

  /** A length with its unit that is no less: rounded up to 0.1 mm or, for an inch user, 1/32 in. */
  public String atLeast(double millimetres) {
    if (unit == Unit.MM || Math.abs(millimetres) < FINE) {
      return LengthFormat.millimetres().withUnit(Math.ceil(millimetres * 10 - ROUNDING) / 10);
    }
    double mark = 25.4 / 32;
    return LengthFormat.of(unit).withUnit(Math.ceil(millimetres / mark - ROUNDING) * mark);
  }

  /** A length without its unit, for sums whose unit stands at the end. */
  public String bare(double millimetres) {
    return LengthFormat.of(unit).text(millimetres);
  }

  /** A mass with its unit. */
  public String mass(double kilograms) {
    return unit == Unit.MM
        ? String.format(Locale.ROOT, "%.1f kg", kilograms)
        : String.format(Locale.ROOT, "%.0f lb", Mass.ofKilograms(kilograms).pounds());
  }

  /** A force with its unit. */
  public static String force(double newtons) {
    return String.format(Locale.ROOT, "%.0f N", newtons);
  }

  /** A place in the station's frame, as near as one finds it with a tape: 1 mm or 1/8 in. */
  public String place(Vec at) {
    return "x " + coarse(at.x()) + ", y " + coarse(at.y()) + ", z " + coarse(at.z());
  }

  private String coarse(double millimetres) {
    return unit == Unit.MM
        ? LengthFormat.millimetres().withUnit(Math.rint(millimetres))
        : LengthFormat.inches(8).withUnit(millimetres);
  }

  /** Up to three of a list of names, then how many more. */
  public static String some(List<String> names) {
    if (names.size() <= 4) {
      return String.join(", ", names);
    }
    return String.join(", ", names.subList(0, 3)) + " and " + (names.size() - 3) + " more";
  }

  /** {@code one thing}, {@code 2 things}. */
  static String count(int number, String one, String many) {
    return number == 1 ? "one " + one : number + " " + many;
  }
}
