package sawstead.export;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import sawstead.solid.Bevel;
import sawstead.solid.Bore;
import sawstead.solid.Corner;
import sawstead.solid.EdgeBore;
import sawstead.solid.Face;
import sawstead.solid.Feature;
import sawstead.solid.Mark;
import sawstead.solid.Opening;
import sawstead.solid.Outline;
import sawstead.solid.Panel;
import sawstead.solid.PocketBore;
import sawstead.solid.Recess;
import sawstead.solid.Vec;

/**
 * Panels of every kind, each from a seed of its own that a failing test prints: rectangles, rounded
 * ones, L shapes, D shapes and discs with crossing grooves, slots, round holes and the rest.
 */
public final class RandomPanels {
  /**
   * A panel and the seed that makes it again.
   *
   * @param seed argument of {@link RandomPanels#ofSeed}
   * @param panel the panel
   */
  public record Sample(long seed, Panel panel) {}

  private final Random random;
  private final double length;
  private final double width;
  private final double thickness;

  private RandomPanels(long seed) {
    random = new Random(seed);
    length = between(200, 1200);
    width = between(100, 600);
    thickness = between(6, 30);
  }

  /** As many panels as asked for, from the seeds that begin with the given one. */
  public static Stream<Sample> from(long seed, int count) {
    return IntStream.range(0, count).mapToObj(i -> new Sample(seed + i, ofSeed(seed + i)));
  }

  /** The panel of one seed. */
  public static Panel ofSeed(long seed) {
    return new RandomPanels(seed).panel();
  }

  private Panel panel() {
    int kind = random.nextInt(5);
    Outline outline = outline(kind);
    List<Feature> features = new ArrayList<>();
    int count = random.nextInt(9);
    for (int i = 0; i < count; i++) {
      features.add(feature());
    }
    if (kind == 0 && random.nextInt(3) == 0) {
      features.add(Bevel.alongEdge(outline, random.nextInt(4), face(), between(2, 20), thickness));
    }
    return new Panel(outline, thickness, features);
  }

  private Outline outline(int kind) {
    return switch (kind) {
      case 0 -> Outline.rectangle(0, 0, length, width);
      case 1 -> Outline.rectangle(0, 0, length, width).rounded(between(3, 45));
      case 2 ->
          Outline.polygon(
              0,
              0,
              length,
              0,
              length,
              width / 2,
              length / 3,
              width / 2,
              length / 3,
              width,
              0,
              width);
      case 3 ->
          Outline.polygon(
              List.of(
                  Corner.of(0, 0),
                  new Corner(length, 0, between(0.1, 1)),
                  Corner.of(length, width),
                  Corner.of(0, width)));
      default -> Outline.circle(length / 2, width / 2, between(80, width));
    };
  }

  private Feature feature() {
    return switch (random.nextInt(11)) {
      case 0, 1 -> Bore.through(u(), v(), between(2, 60));
      case 2 -> new Bore(u(), v(), between(2, 40), depth(), face());
      case 3 -> new Recess("groove", groove(), depth(), face());
      case 4 -> new Recess("dado", slot(), depth(), face());
      case 5 ->
          new Recess(
              "rabbet", Outline.rectangle(-5, -5, between(5, 20), width + 5), depth(), face());
      case 6 -> new Opening(slot());
      case 7 -> new Opening(Outline.circle(u(), v(), between(10, 80)));
      case 8 -> new Recess("recess", box(), depth(), face());
      case 9 -> new Mark("to the left", face(), List.of(new Mark.Stroke(u(), v(), u(), v())));
      default ->
          random.nextBoolean()
              ? new EdgeBore(new Vec(0, v(), thickness / 2), new Vec(1, 0, 0), between(2, 5), 40)
              : new PocketBore(new Vec(u(), v(), thickness), new Vec(0.9, 0, -0.25), 9.5, 38);
    };
  }

  private Outline groove() {
    double fromU = u();
    double fromV = v();
    double angle = random.nextInt(3) == 0 ? between(0, 6.28) : random.nextInt(4) * Math.PI / 2;
    double reach = between(50, 700);
    return Outline.bar(
        fromU,
        fromV,
        fromU + reach * Math.cos(angle),
        fromV + reach * Math.sin(angle),
        between(4, 25));
  }

  private Outline slot() {
    return Outline.slot(u(), v(), u(), v(), between(6, 30));
  }

  private Outline box() {
    double u = u();
    double v = v();
    Outline box = Outline.rectangle(u, v, u + between(20, 120), v + between(20, 120));
    return random.nextBoolean() ? box : box.rounded(between(2, 9));
  }

  private double u() {
    return between(0.02, 0.98) * length;
  }

  private double v() {
    return between(0.02, 0.98) * width;
  }

  private double depth() {
    return between(0.1, 0.9) * thickness;
  }

  private Face face() {
    return random.nextBoolean() ? Face.FRONT : Face.BACK;
  }

  /** To a hundredth, as people write; so different features often share a coordinate or a depth. */
  private double between(double low, double high) {
    double value = low + random.nextDouble() * (high - low);
    return random.nextInt(3) == 0 ? value : Math.round(value * 100) / 100.0;
  }
}
