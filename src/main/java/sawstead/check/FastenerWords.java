package sawstead.check;

import sawstead.joinery.Fastener;
import sawstead.joinery.ScrewGauge;
import sawstead.measure.LengthFormat;

/** What a fastener is called in a shop. */
public final class FastenerWords {
  private FastenerWords() {}

  /** Kind and size, such as {@code wood screw #8 x 32 mm}. */
  public static String item(Fastener fastener, Words words) {
    String length = words.length(fastener.length());
    return switch (fastener.kind()) {
      case WOOD_SCREW, HINGE_SCREW, CASTER_SCREW ->
          "wood screw #" + gauge(fastener) + " x " + length;
      case POCKET_SCREW -> "pocket screw, washer head, #" + gauge(fastener) + " x " + length;
      case BRAD -> "brad " + mm(fastener.diameter()) + " x " + length;
      case BOLT -> "bolt " + mm(fastener.diameter()) + ", grip " + length;
    };
  }

  private static int gauge(Fastener fastener) {
    return ScrewGauge.nearest(fastener.diameter()).number();
  }

  private static String mm(double millimetres) {
    return LengthFormat.millimetres().withUnit(millimetres);
  }
}
