package sawstead.station;

import java.util.List;
import java.util.Locale;
import java.util.Random;

/**
 * Makes up a saw, a vac, casters and wishes that a person could have, as the text of a brief in mm.
 * The same seed gives the same text.
 */
public final class RandomBrief {

  private final Random random;
  private final StringBuilder text = new StringBuilder();

  private RandomBrief(long seed) {
    random = new Random(seed);
  }

  /** The text of a brief. */
  public static String of(long seed) {
    return new RandomBrief(seed).write();
  }

  private String write() {
    double width = between(520, 1000);
    double depth = between(430, 690);
    double height = between(290, 350);
    double left = width * between(0.4, 0.55);
    double right = width - left;
    double arbor = depth * between(0.45, 0.55);
    double sheet = between(17, 19.5);
    line("name: random");
    line("units: mm");
    line("saw:");
    line("  table: {width: %.2f, depth: %.2f, height: %.2f}", width, depth, height);
    double l = left - between(20, 60);
    double r = right - between(20, 60);
    double rear = depth - between(20, 50);
    line("  body: {left: %.2f, right: %.2f, front: 30, rear: %.2f}", l, r, rear);
    line(
        "  feet: {left: %.2f, right: %.2f, front: 40, rear: %.2f, rise: %s}",
        l - 10, r - 10, rear - 10, one("0", "15"));
    boolean open = random.nextInt(3) == 0;
    line("  bottom: %s", open ? "open" : "closed");
    line("  blade: {leftEdge: %.2f, arbor: %.2f}", left, arbor);
    line("  slots:");
    line(
        "    - {at: %.2f, width: %s, depth: %s}",
        -between(100, 150), one("16", "19", "19.05"), one("7", "9.5"));
    if (random.nextBoolean()) {
      line("    - {at: %.2f, width: 19, depth: 9.5, kind: t}", between(100, 150));
    }
    String kind = one("sliding", "extending", "one-end");
    line(
        "  fence: {kind: %s, right: %.1f, left: %.1f}", kind, between(250, 700), between(100, 300));
    boolean motor = random.nextInt(4) == 0;
    if (!motor && random.nextInt(4) > 0) {
      line(
          "  dust: {side: rear, x: %.1f, below: %.1f, diameter: %s, out: %.1f}",
          between(-50, 50), between(160, 220), one("38", "64"), between(60, 150));
    }
    if (motor) {
      line(
          "  behind: [{id: motor, left: -150, right: 160, out: %.1f, top: 130, bottom: 280, swings: true}]",
          between(250, 350));
    }
    line("stock:");
    line("  - {name: main, length: 2440, width: 1220, thickness: %.2f}", sheet);
    line("  - {name: thin, length: 2440, width: 1220, thickness: %.2f}", between(14.5, 15.3));
    double vac = between(300, 480);
    boolean hasVac = random.nextInt(4) > 0;
    if (hasVac) {
      line(
          "vac: {width: %.1f, depth: %.1f, height: %.1f, lidRoom: 20, around: %.1f, hose: {cuff: %.1f}}",
          between(300, 420), between(300, 420), vac, between(10, 30), between(40, 62));
    }
    switch (random.nextInt(3)) {
      case 0 -> line("casters: {height: %.1f}", between(65, 110));
      case 1 -> line("casters: none");
      default -> line("casters: {frame: {insideWidth: 1400, insideDepth: 1500, addedHeight: 25}}");
    }
    line("station:");
    line("  legs: {length: %.1f}", Math.max(420, (hasVac ? vac : 0) + (open ? 75 : 0) + 130));
    line("  stand:");
    line("    stretchers: {height: %.1f, fit: %s}", between(70, 100), one("lapped", "between"));
    line("    joint: %s", one("screw", "pocket", "brad"));
    if (random.nextBoolean()) {
      line(
          "    sides: {front: %s, rear: stretchers, left: %s, right: %s}",
          one("open", "stretchers"), one("panel", "stretchers"), one("open", "stretchers"));
    }
    line("  wings:");
    for (String side : List.of("left", "right")) {
      if (random.nextInt(4) == 0) {
        line("    %s: none", side);
      } else {
        line(
            "    %s: {width: %.1f, opening: %s, joint: %s, sheet: %s}",
            side,
            between(200, 450),
            one(side, "front", "rear"),
            one("screw", "pocket", "brad", "dado", "rabbet"),
            one("main", "thin"));
      }
    }
    if (random.nextInt(6) == 0) {
      line("  outfeed: none");
    } else {
      boolean leaf = random.nextInt(3) == 0;
      int lids = 1 + random.nextInt(2);
      line(
          "  outfeed: {mount: %s, lids: %d, overhang: %s, joint: %s, sheet: %s}",
          one("on-top", "on-top", "hung"),
          lids,
          leaf ? "180" : "0",
          one("screw", "pocket", "brad", "dado", "rabbet"),
          one("main", "thin"));
    }
    return text.toString();
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
