package sawstead.squaring;

/**
 * A triangle between fence and kerf: from where they meet, one side along the fence, one along the
 * kerf away from the operator, and the diagonal between their ends. With sides of 3 and 4 it is 5
 * when the corner is square; any sides do. Law of cosines: cos g = (p^2 + q^2 - d^2) / (2 p q).
 *
 * @param side the side of the blade on which the triangle lies
 * @param alongFence mm
 * @param alongKerf mm
 * @param diagonal mm
 */
public record ThreeFourFive(Hand side, Reading alongFence, Reading alongKerf, Reading diagonal) {
  /** Refuses three sides that make no triangle. */
  public ThreeFourFive {
    double p = alongFence.mean();
    double q = alongKerf.mean();
    double d = diagonal.mean();
    if (!(d < p + q && d > Math.abs(p - q))) {
      throw new IllegalArgumentException(
          "sides of " + p + ", " + q + " and " + d + " mm make no triangle");
    }
  }

  /** The fence's error; its uncertainty follows from the derivatives of the law of cosines. */
  public Squareness squareness() {
    double p = alongFence.mean();
    double q = alongKerf.mean();
    double d = diagonal.mean();
    double cos = (p * p + q * q - d * d) / (2 * p * q);
    double sin = Math.sqrt(1 - cos * cos);
    double byDiagonal = d / (p * q * sin) * diagonal.uncertainty();
    double byFence = (p - q * cos) / (p * q * sin) * alongFence.uncertainty();
    double byKerf = (q - p * cos) / (p * q * sin) * alongKerf.uncertainty();
    double u = Math.sqrt(byDiagonal * byDiagonal + byFence * byFence + byKerf * byKerf);
    return new Squareness(side.sign() * (Math.acos(cos) - Math.PI / 2), u);
  }
}
