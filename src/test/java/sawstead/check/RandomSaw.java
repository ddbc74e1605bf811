package sawstead.check;

import java.util.Locale;
import java.util.Random;

/** Makes up saws that a person could have, for jigs without a station. Same seed, same text. */
final class RandomSaw {
  private final Random random;
  private final StringBuilder text = new StringBuilder();

  private RandomSaw(long seed) {
    random = new Random(seed);
  }

  /** Name, units, saw and stock. */
  static String of(long seed) {
    return new RandomSaw(seed).write();
  }

  private String write() {
    double width = between(520, 1000);
    double depth = between(430, 690);
    double height = between(290, 350);
    double left = width * between(0.42, 0.55);
    double right = width - left;
    double diameter = between(210, 315);
    double up = between(0.24, 0.32) * diameter;
    double kerf = between(2.2, 3.2);
    line("name: random");
    line("units: mm");
    line("saw:");
    line("  table: {width: %.2f, depth: %.2f, height: %.2f}", width, depth, height);
    line(
        "  body: {left: %.2f, right: %.2f, front: 30, rear: %.2f}",
        left - 40, right - 40, depth - 30);
    line(
        "  feet: {left: %.2f, right: %.2f, front: 40, rear: %.2f}",
        left - 50, right - 50, depth - 40);
    line("  bottom: closed");
    line(
        "  blade: {leftEdge: %.2f, arbor: %.2f, diameter: %.2f, height: %.2f, plate: %.2f, kerf: %.2f}",
        left, depth * between(0.47, 0.54), diameter, up, kerf - 0.9, kerf);
    line("  tilt: {side: %s, degrees: 45}", one("left", "right"));
    if (random.nextInt(3) > 0) {
      line("  knife: {thickness: %.2f, belowCrown: 2}", kerf - 0.4);
    }
    line(
        "  throat: {x: %.2f, length: %.2f, width: %.2f, ledge: %.2f, radius: %.2f, shape: %s}",
        between(-8, 8),
        Math.min(1.25 * diameter, depth - 60),
        between(80, 110),
        between(1.8, 9),
        between(0, 20),
        one("straight", "round", "tapered"));
    int slots = random.nextInt(3);
    line("  slots:");
    if (slots != 1) {
      slot(-between(90, 150));
    }
    if (slots != 2) {
      slot(between(90, 150));
    }
    line(
        "  fence: {kind: %s, right: %.1f, left: %.1f}",
        one("sliding", "extending", "one-end"), between(250, 700), between(100, 300));
    line("stock:");
    line("  - {name: main, length: 2440, width: 1220, thickness: %.2f}", between(11.5, 18.5));
    if (random.nextBoolean()) {
      line("  - {name: thin, length: 1525, width: 1525, thickness: %.2f}", between(5.2, 6.3));
    }
    return text.toString();
  }

  private void slot(double at) {
    double width = between(15.8, 19.4);
    double depth = between(7, 10);
    String kind = one("plain", "t", "tabbed");
    String foot =
        kind.equals("plain") ? "" : String.format(Locale.ROOT, ", footWidth: %.2f", width + 5);
    line("    - {at: %.2f, width: %.2f, depth: %.2f, kind: %s%s}", at, width, depth, kind, foot);
  }

  private double between(double low, double high) {
    return low + random.nextDouble() * (high - low);
  }

  private String one(String... of) {
    return of[random.nextInt(of.length)];
  }

  private void line(String format, Object... values) {
    text.append(String.format(Locale.ROOT, format, values)).append('\n');
  }
}
