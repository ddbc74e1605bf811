package sawstead.preview.scene;

import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** Where one stands to look at a station, named from the operator's side of the saw. */
public enum Stance {
  /** Where the operator stands. */
  INFEED(0, 8),
  /** Behind the saw, where boards arrive. */
  OUTFEED(180, 8),
  /** At the operator's left. */
  LEFT(-90, 8),
  /** At the operator's right. */
  RIGHT(90, 8),
  /** On a ladder, the operator's side below. */
  ABOVE(0, 89.9),
  /** In front of the right corner, a little above. */
  CORNER(38, 24);

  private final double azimuth;
  private final double elevation;

  Stance(double azimuth, double elevation) {
    this.azimuth = azimuth;
    this.elevation = elevation;
  }

  /** Degrees round the station, from the infeed side towards the right. */
  public double azimuth() {
    return azimuth;
  }

  /** Degrees above the floor. */
  public double elevation() {
    return elevation;
  }

  /** The word for it: {@code infeed}. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** The stance of that word. */
  public static Optional<Stance> of(String word) {
    return Stream.of(values()).filter(s -> s.word().equals(word)).findFirst();
  }
}
