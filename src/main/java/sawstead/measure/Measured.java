package sawstead.measure;

import java.util.Objects;

/**
 * A length (mm), angle (degrees) or mass (kg) that somebody measured, or that stands in for a
 * measurement not made. The true value lies in {@code [nominal - minus, nominal + plus]}.
 *
 * @param path where the value stands in the brief, for example {@code saw.table.width}
 * @param nominal the value to compute with
 * @param minus how far the true value may lie below, never negative
 * @param plus how far the true value may lie above, never negative
 * @param origin how the value and its band came about
 */
public record Measured(String path, double nominal, double minus, double plus, Origin origin) {

  /** How a value and its band came about. */
  public enum Origin {
    /** Measured; the band is the usual reading error of the tool. */
    MEASURED,
    /** Measured, and the user gave the band. */
    BANDED,
    /** Not given: a value that suits the trade, with the trade's band. */
    DEFAULT,
    /** The user says that it is not known: a default with a wide band. */
    UNKNOWN
  }

  /** Refuses what cannot be: no path, NaN or infinite figures, a negative band. */
  public Measured {
    Objects.requireNonNull(path, "path");
    Objects.requireNonNull(origin, "origin");
    if (!Double.isFinite(nominal) || !Double.isFinite(minus) || !Double.isFinite(plus)) {
      throw new IllegalArgumentException(path + " is not a finite number");
    }
    if (minus < 0 || plus < 0) {
      throw new IllegalArgumentException(path + " has a negative band");
    }
  }

  /** A measured value taken as exact. */
  public static Measured of(String path, double nominal) {
    return new Measured(path, nominal, 0, 0, Origin.MEASURED);
  }

  /** A value with the same band on either side. */
  public static Measured plusMinus(String path, double nominal, double band, Origin origin) {
    return new Measured(path, nominal, band, band, origin);
  }

  /** The least value of the band. */
  public double low() {
    return nominal - minus;
  }

  /** The greatest value of the band. */
  public double high() {
    return nominal + plus;
  }

  /**
   * The same measurement with another value to compute with, for rebuilding with a perturbation.
   */
  public Measured withNominal(double value) {
    return new Measured(path, value, minus, plus, origin);
  }
}
