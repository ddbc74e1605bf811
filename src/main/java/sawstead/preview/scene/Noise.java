package sawstead.preview.scene;

import java.util.Random;

/**
 * Value noise on a torus, after K. Perlin, "An image synthesizer" (1985), in its plain form: random
 * values at lattice points, blended smoothly between. From 0 to 1, the same on opposite edges.
 */
final class Noise {
  private final int across;
  private final int down;
  private final double[] values;

  /**
   * @param seed the same seed gives the same noise
   * @param across lattice cells along s
   * @param down lattice cells along t
   */
  Noise(long seed, int across, int down) {
    this.across = across;
    this.down = down;
    values = new Random(seed).doubles((long) across * down).toArray();
  }

  /** The value at (s, t); both repeat with period 1. */
  double at(double s, double t) {
    double x = (s - Math.floor(s)) * across;
    double y = (t - Math.floor(t)) * down;
    int i = (int) x;
    int j = (int) y;
    double fx = smooth(x - i);
    double fy = smooth(y - j);
    double low = mix(value(i, j), value(i + 1, j), fx);
    double high = mix(value(i, j + 1), value(i + 1, j + 1), fx);
    return mix(low, high, fy);
  }

  private double value(int i, int j) {
    return values[j % down * across + i % across];
  }

  private static double mix(double a, double b, double part) {
    return a + (b - a) * part;
  }

  private static double smooth(double x) {
    return x * x * (3 - 2 * x);
  }
}
