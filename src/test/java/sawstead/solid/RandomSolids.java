package sawstead.solid;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/**
 * Seeded panels and placements for property tests. Linework is deliberately awkward: many
 * coordinates are shared between features or differ by a few steps of the grid or less.
 */
final class RandomSolids {
  static final double THICKNESS = 18;

  private final Random random;

  RandomSolids(long seed) {
    random = new Random(seed);
  }

  double between(double low, double high) {
    return low + (high - low) * random.nextDouble();
  }

  int below(int bound) {
    return random.nextInt(bound);
  }

  Vec point(double low, double high) {
    return new Vec(between(low, high), between(low, high), between(low, high));
  }

  Vec direction() {
    return new Vec(random.nextGaussian(), random.nextGaussian(), random.nextGaussian()).unit();
  }

  /** Any rotation about the origin, then a move within the given distance. */
  Placement placement(double within) {
    return Placement.identity()
        .turned(Vec.ZERO, direction(), between(-180, 180))
        .moved(point(-within, within));
  }

  /** Multiples of right angles, then a move on a half-millimetre raster. */
  Placement squarePlacement(int within) {
    Placement to = Placement.identity();
    for (Axis axis : Axis.values()) {
      to = to.turned(axis, 90 * below(4));
    }
    return to.moved(raster(within), raster(within), raster(within));
  }

  private double raster(int within) {
    return (below(4 * within) - 2 * within) / 2.0;
  }

  /** The number itself, or one that differs by a few steps of the grid or less. */
  private double near(double x) {
    return below(3) == 0 ? x + (below(5) - 2) * Math.pow(2, -20 - below(6)) : x;
  }

  Outline outline() {
    return switch (below(6)) {
      case 0 -> Outline.circle(between(50, 350), between(50, 250), between(20, 200));
      case 1 ->
          Outline.slot(
              between(0, 400), between(0, 300), between(0, 400), between(0, 300), between(5, 60));
      case 2 ->
          Outline.bar(
              near(100 * below(5)),
              near(50 * below(7)),
              near(100 * below(5) + 33),
              near(50 * below(7)),
              near(20));
      case 3 ->
          Outline.rectangle(
              near(50 * below(5)),
              near(50 * below(5)),
              near(50 * below(5) + 300),
              near(50 * below(5) + 250));
      case 4 -> star();
      default -> Outline.rectangle(near(0), near(0), near(400), near(300)).rounded(between(1, 100));
    };
  }

  private Outline star() {
    int n = 3 + below(6);
    double[] uv = new double[2 * n];
    double start = between(0, 6);
    double radius = between(20, 200);
    double u = between(0, 400);
    double v = between(0, 300);
    for (int i = 0; i < n; i++) {
      double r = radius * between(0.3, 1);
      uv[2 * i] = near(u + r * Math.cos(start + 2 * Math.PI * i / n));
      uv[2 * i + 1] = near(v + r * Math.sin(start + 2 * Math.PI * i / n));
    }
    return Outline.polygon(uv);
  }

  Feature feature() {
    return switch (below(4)) {
      case 0 -> new Opening(outline());
      case 1 ->
          new Recess(
              "groove",
              outline(),
              near(3 * (1 + below(5))),
              random.nextBoolean() ? Face.FRONT : Face.BACK);
      case 2 ->
          new Bore(between(0, 400), between(0, 300), between(2, 80), between(1, 17), Face.FRONT);
      default -> Bore.through(near(50 * below(9)), near(50 * below(7)), between(2, 80));
    };
  }

  /** A panel of up to six features; one in four has bevels. It may have lost all its material. */
  Panel panel() {
    Outline outline = outline();
    List<Feature> features = new ArrayList<>();
    int count = below(6);
    for (int i = 0; i < count; i++) {
      features.add(feature());
    }
    if (below(4) == 0) {
      addBevel(outline, features);
      addBevel(outline, features);
    }
    return new Panel(outline, THICKNESS, features);
  }

  private void addBevel(Outline outline, List<Feature> features) {
    int edge = below(outline.corners().size());
    if (outline.isArc(edge)) {
      return;
    }
    Face face = random.nextBoolean() ? Face.FRONT : Face.BACK;
    Bevel bevel = Bevel.alongEdge(outline, edge, face, between(1, 30), between(1, 18));
    try {
      bevel.demandFits(outline, THICKNESS);
      features.add(bevel);
    } catch (SolidException outlineOnBothSides) {
      // Not every edge of a star can be bevelled; this one stays square.
    }
  }

  /** A panel that has material left. */
  Panel soundPanel() {
    while (true) {
      Panel panel = panel();
      try {
        if (panel.volume() > 1) {
          return panel;
        }
      } catch (SolidException eaten) {
        // Its features took all of it: draw another.
      }
    }
  }

  /** A sound panel, any way round, its middle within the given distance of the origin. */
  Body body(String id, double within) {
    Placement centred = Placement.at(new Vec(-200, -150, -THICKNESS / 2));
    return new Body(id, soundPanel(), placement(within).after(centred));
  }

  /** A convex piece: a rotated box cut by a few random planes. */
  Piece piece(double size) {
    List<Plane> planes = new ArrayList<>();
    int cuts = below(6);
    for (int i = 0; i < cuts; i++) {
      Vec n = direction();
      planes.add(new Plane(n.x(), n.y(), n.z(), between(0.3, 0.8) * size / 2));
    }
    Piece box = Pieces.box(between(0.5, 1) * size, between(0.5, 1) * size, between(0.5, 1) * size);
    return new Clipper().cut(box, planes).placed(placement(size));
  }
}
