package sawstead.joinery;

import java.util.List;
import sawstead.solid.Vec;

/**
 * Least distances from stretches of a fastener's axis to the sides of a board that run along it.
 */
final class EdgeDistance {
  /** A side that the axis meets more squarely than this is entered, not run along: 45 degrees. */
  private static final double ALONG = Math.sqrt(0.5);

  private EdgeDistance() {}

  /** To the edges of the outline; infinite if there is no stretch. */
  static double inPlane(Board board, List<Rod> stretches) {
    double[] uv = board.outline().polygonised(false, PrismAir.ARC_ERROR);
    double least = Double.POSITIVE_INFINITY;
    for (Rod stretch : stretches) {
      Vec run = direction(stretch);
      for (int i = 0; i < uv.length; i += 2) {
        Vec p = new Vec(uv[i], uv[i + 1], 0);
        Vec q = new Vec(uv[(i + 2) % uv.length], uv[(i + 3) % uv.length], 0);
        Vec edge = q.minus(p).unit();
        double square = Math.abs(run.dot(new Vec(edge.y(), -edge.x(), 0)));
        if (square <= ALONG) {
          least =
              Math.min(least, Segments.distance(flat(stretch.from()), flat(stretch.to()), p, q));
        }
      }
    }
    return least;
  }

  /** To the two faces; infinite if there is no stretch, or the axis goes in through a face. */
  static double toFaces(Board board, List<Rod> stretches) {
    double least = Double.POSITIVE_INFINITY;
    for (Rod stretch : stretches) {
      if (Math.abs(direction(stretch).z()) <= ALONG) {
        for (Vec end : List.of(stretch.from(), stretch.to())) {
          least = Math.min(least, Math.min(end.z(), board.thickness() - end.z()));
        }
      }
    }
    return least;
  }

  private static Vec direction(Rod stretch) {
    return stretch.to().minus(stretch.from()).unit();
  }

  private static Vec flat(Vec local) {
    return new Vec(local.x(), local.y(), 0);
  }
}
