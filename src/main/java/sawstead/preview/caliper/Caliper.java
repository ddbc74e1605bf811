package sawstead.preview.caliper;

import java.util.Locale;
import java.util.Optional;
import sawstead.check.Words;
import sawstead.solid.Distance;
import sawstead.solid.Vec;

/** How far two spots are from each other. */
public final class Caliper {
  /** Cosine and sine below which two directions count as square or parallel: rounding only. */
  private static final double ROUNDING = 1e-9;

  private Caliper() {}

  /**
   * What the caliper reads.
   *
   * @param millimetres the distance; empty if there is none, since the two cross
   * @param degrees the angle between them; 0 when they are parallel
   * @param from where it is taken
   * @param to where it is taken to
   * @param kind of distance, in words
   */
  public record Reading(
      Optional<Double> millimetres, double degrees, Vec from, Vec to, String kind) {

    /** In the user's units. */
    public String words(Words words) {
      String angle =
          degrees > 1e-6 ? String.format(Locale.ROOT, "at an angle of %.2f\u00b0", degrees) : "";
      String length = millimetres.map(m -> words.length(m) + " " + kind).orElse("");
      return length.isEmpty() || angle.isEmpty() ? length + angle : length + ", " + angle;
    }
  }

  /**
   * The distance square to both when they are parallel; else that of the bodies, with the angle.
   */
  public static Reading between(Spot a, Spot b) {
    if (a instanceof Spot.FaceSpot f) {
      return b instanceof Spot.FaceSpot g ? faces(f, g) : faceAndEdge(f, (Spot.EdgeSpot) b);
    }
    Spot.EdgeSpot e = (Spot.EdgeSpot) a;
    return b instanceof Spot.FaceSpot g ? faceAndEdge(g, e) : edges(e, (Spot.EdgeSpot) b);
  }

  private static Reading faces(Spot.FaceSpot a, Spot.FaceSpot b) {
    double sine = a.normal().cross(b.normal()).length();
    if (sine > ROUNDING) {
      return crossing(a, b, degrees(sine, Math.abs(a.normal().dot(b.normal()))));
    }
    return square(a.at(), b.at().minus(a.at()).dot(a.normal()), a.normal(), "face to face");
  }

  private static Reading faceAndEdge(Spot.FaceSpot face, Spot.EdgeSpot edge) {
    double sine = Math.abs(face.normal().dot(edge.along()));
    if (sine > ROUNDING) {
      return crossing(face, edge, degrees(sine, Math.sqrt(Math.max(0, 1 - sine * sine))));
    }
    double off = face.at().minus(edge.at()).dot(face.normal());
    return square(edge.at(), off, face.normal(), "edge to face");
  }

  private static Reading edges(Spot.EdgeSpot a, Spot.EdgeSpot b) {
    double sine = a.along().cross(b.along()).length();
    if (sine > ROUNDING) {
      return crossing(a, b, degrees(sine, Math.abs(a.along().dot(b.along()))));
    }
    Vec between = b.at().minus(a.at());
    Vec across = between.minus(a.along().scale(between.dot(a.along())));
    return new Reading(
        Optional.of(across.length()), 0, a.at(), a.at().plus(across), "edge to edge");
  }

  private static Reading square(Vec from, double signed, Vec normal, String kind) {
    return new Reading(
        Optional.of(Math.abs(signed)), 0, from, from.plus(normal.scale(signed)), kind);
  }

  private static double degrees(double sine, double cosine) {
    return Math.toDegrees(Math.atan2(sine, cosine));
  }

  private static Reading crossing(Spot a, Spot b, double degrees) {
    if (a.body().id().equals(b.body().id())) {
      return new Reading(Optional.empty(), degrees, a.at(), b.at(), "");
    }
    Distance clear = Distance.between(a.body(), b.body());
    Vec from = clear.value() > 0 ? clear.onA() : a.at();
    Vec to = clear.value() > 0 ? clear.onB() : b.at();
    return new Reading(Optional.of(clear.value()), degrees, from, to, "between the two bodies");
  }
}
