package sawstead.intake;

import java.util.Optional;
import sawstead.measure.AmountFormatException;
import sawstead.measure.LengthText;
import sawstead.measure.Parsed;
import sawstead.measure.Unit;

/**
 * What the trade name of a sheet says about its real thickness.
 *
 * <p>Inch categories follow US PS 1-19, unsanded, touch-sanded and overlaid panels (REF-PLY-01):
 * 1/32 in either way up to 13/16 in, 5 % above. Millimetre names follow EN 315:2000, sanded panels
 * (REF-PLY-05, from memory): for t mm, +(0.2 + 0.03 t) and -(0.4 + 0.03 t). Example: 3/4 is 0.719
 * to 0.781 in (REF-PLY-04); 18 mm is 17.06 to 18.74 mm (REF-PLY-06).
 *
 * @param nominal mm
 * @param minus mm below
 * @param plus mm above
 */
record NominalThickness(double nominal, double minus, double plus) {

  private static final double PS1_BAND = 25.4 / 32;
  private static final double PS1_LIMIT = 25.4 * 13 / 16;
  private static final double PS1_SHARE = 0.05;
  private static final double THINNEST = 2;
  private static final double THICKEST = 60;

  /**
   * The band of a trade name. A bare fraction is inches, as the trade writes it, in every file.
   *
   * @return empty if the text is no thickness of a sheet
   */
  static Optional<NominalThickness> of(String text, Unit units) {
    Unit plain = text.indexOf('/') >= 0 ? Unit.INCH : units;
    Parsed parsed;
    try {
      parsed = LengthText.parse(text, plain);
    } catch (AmountFormatException noLength) {
      return Optional.empty();
    }
    double t = parsed.nominal();
    if (t < THINNEST || t > THICKEST) {
      return Optional.empty();
    }
    Unit system = parsed.written() == null ? plain : parsed.written();
    return Optional.of(system == Unit.INCH ? ps1(t) : en315(t));
  }

  private static NominalThickness ps1(double t) {
    double band = t <= PS1_LIMIT ? PS1_BAND : PS1_SHARE * t;
    return new NominalThickness(t, band, band);
  }

  private static NominalThickness en315(double t) {
    return new NominalThickness(t, 0.4 + 0.03 * t, 0.2 + 0.03 * t);
  }
}
