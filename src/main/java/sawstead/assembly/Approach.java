package sawstead.assembly;

import sawstead.solid.Axis;
import sawstead.solid.Vec;

/** From where something comes to its place, in words. */
public final class Approach {
  private Approach() {}

  /**
   * {@code from above, round a corner}; empty where no way is known.
   *
   * @param direction of the last leg, station frame; zero where no way is known
   * @param legs how many translations the way has
   */
  public static String words(Vec direction, int legs) {
    if (direction.length() == 0) {
      return "";
    }
    String turns = legs > 1 ? ", round " + (legs == 2 ? "a corner" : "corners") : "";
    return side(direction) + turns;
  }

  private static String side(Vec direction) {
    return switch (Axis.nearest(direction)) {
      case X -> direction.x() < 0 ? "from the right" : "from the left";
      case Y -> direction.y() < 0 ? "from the outfeed" : "from the infeed";
      case Z -> direction.z() < 0 ? "from above" : "from below";
    };
  }
}
