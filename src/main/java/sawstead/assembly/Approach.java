package sawstead.assembly;

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
    double x = Math.abs(direction.x());
    double y = Math.abs(direction.y());
    double z = Math.abs(direction.z());
    if (z >= x && z >= y) {
      return direction.z() < 0 ? "from above" : "from below";
    }
    if (x >= y) {
      return direction.x() < 0 ? "from the right" : "from the left";
    }
    return direction.y() < 0 ? "from the outfeed" : "from the infeed";
  }
}
