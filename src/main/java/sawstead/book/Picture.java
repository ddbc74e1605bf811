package sawstead.book;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import sawstead.drawing.page.Ink;
import sawstead.drawing.page.Paper;
import sawstead.solid.Mesh;
import sawstead.solid.Vec;

/** Solids on a page, seen by a camera, as large as a frame allows; hidden lines are left out. */
final class Picture {
  /** Pixels of the filled faces to a point; lines are true lines. */
  private static final double FINE = 2;

  /** Room for lines and heads of arrows at the rim, points. */
  private static final double RIM = 6;

  private static final double SLACK = 1.0;
  private static final Vec LIGHT = new Vec(-0.35, -0.5, 0.79).unit();
  private static final double DARKEST = 0.72;
  private static final double HEAD = 9;

  private final Camera camera;
  private final List<Shown> shown;
  private final Frame frame;
  private Frame used;
  private double scale;
  private double left;
  private double low;

  /** A rectangle of a page, points. */
  record Frame(double x, double y, double width, double height) {}

  /**
   * @param shown at least one
   * @param also points that have to be in it as well, mm
   */
  Picture(Camera camera, List<Shown> shown, List<Vec> also, Frame frame) {
    this.camera = camera;
    this.shown = List.copyOf(shown);
    this.frame = frame;
    fit(also);
  }

  private void fit(List<Vec> also) {
    List<Vec> all = new ArrayList<>(also);
    for (Shown one : shown) {
      for (int k = 0; k < one.mesh().vertexCount(); k++) {
        all.add(one.mesh().vertex(k));
      }
    }
    double[] box = {
      Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY,
      Double.NEGATIVE_INFINITY, Double.NEGATIVE_INFINITY
    };
    for (Vec point : all) {
      Vec at = camera.seen(point);
      box[0] = Math.min(box[0], at.x());
      box[1] = Math.min(box[1], at.y());
      box[2] = Math.max(box[2], at.x());
      box[3] = Math.max(box[3], at.y());
    }
    double wide = Math.max(1, box[2] - box[0]);
    double high = Math.max(1, box[3] - box[1]);
    scale = Math.min((frame.width() - 2 * RIM) / wide, (frame.height() - 2 * RIM) / high);
    // Only as large as what is seen: empty paper costs time as well.
    double width = scale * wide + 2 * RIM;
    double height = scale * high + 2 * RIM;
    used =
        new Frame(
            frame.x() + (frame.width() - width) / 2,
            frame.y() + (frame.height() - height) / 2,
            width,
            height);
    left = RIM - scale * box[0];
    low = RIM - scale * box[1];
  }

  /** Where a point is on the page: x, y in points, and how near it is in mm. */
  Vec onPage(Vec point) {
    Vec at = camera.seen(point);
    return new Vec(used.x() + left + scale * at.x(), used.y() + low + scale * at.y(), at.z());
  }

  void draw(Paper paper) throws IOException {
    Raster raster =
        new Raster((int) Math.ceil(used.width() * FINE), (int) Math.ceil(used.height() * FINE));
    shown.forEach(one -> fill(raster, one));
    BufferedImage image = raster.image();
    double high = image.getHeight() / FINE;
    paper.picture(image, used.x(), used.y() + used.height() - high, image.getWidth() / FINE, high);
    for (Shown one : shown) {
      for (Creases.Crease crease : Creases.of(one.mesh(), camera.toward())) {
        line(paper, raster, crease, one.tone());
      }
    }
  }

  /** An arrow from one point to another, over everything. */
  void arrow(Paper paper, Vec from, Vec to) throws IOException {
    Vec a = onPage(from);
    Vec b = onPage(to);
    double dx = b.x() - a.x();
    double dy = b.y() - a.y();
    double length = Math.sqrt(dx * dx + dy * dy);
    if (length < 1.2 * HEAD) {
      return; // Straight towards who looks: nothing to be seen of it.
    }
    double ux = dx / length;
    double uy = dy / length;
    double x = b.x() - HEAD * ux;
    double y = b.y() - HEAD * uy;
    paper.path(new double[] {a.x(), a.y(), x, y}, 2.2, Ink.COBALT);
    double half = HEAD / 2;
    paper.polygon(
        new double[] {b.x(), b.y(), x - half * uy, y + half * ux, x + half * uy, y - half * ux},
        Ink.COBALT);
  }

  private double[] pixel(Vec point) {
    Vec at = camera.seen(point);
    return new double[] {
      (left + scale * at.x()) * FINE, (used.height() - low - scale * at.y()) * FINE, at.z()
    };
  }

  private void fill(Raster raster, Shown one) {
    Mesh mesh = one.mesh();
    for (int t = 0; t < mesh.triangleCount(); t++) {
      Vec normal = mesh.normal(t);
      if (normal.dot(camera.toward()) <= 0) {
        continue;
      }
      double[] p = new double[9];
      for (int k = 0; k < 3; k++) {
        System.arraycopy(pixel(mesh.vertex(mesh.corner(t, k))), 0, p, 3 * k, 3);
      }
      double lit = DARKEST + (1 - DARKEST) * Math.max(0, normal.dot(LIGHT));
      raster.fill(p, one.tone().lit(Math.min(1, lit)));
    }
  }

  /** The stretches of a line that are seen. */
  private void line(Paper paper, Raster raster, Creases.Crease crease, Tone tone)
      throws IOException {
    double[] a = pixel(crease.from());
    double[] b = pixel(crease.to());
    int steps =
        Math.max(1, (int) Math.ceil(Math.max(Math.abs(b[0] - a[0]), Math.abs(b[1] - a[1]))));
    int begun = -1;
    for (int k = 0; k <= steps + 1; k++) {
      double t = (double) k / steps;
      boolean seen =
          k <= steps
              && raster.sees(
                  a[0] + t * (b[0] - a[0]),
                  a[1] + t * (b[1] - a[1]),
                  a[2] + t * (b[2] - a[2]),
                  SLACK);
      if (seen && begun < 0) {
        begun = k;
      } else if (!seen && begun >= 0) {
        stretch(paper, crease, (double) begun / steps, (double) (k - 1) / steps, tone);
        begun = -1;
      }
    }
  }

  private void stretch(Paper paper, Creases.Crease crease, double from, double to, Tone tone)
      throws IOException {
    Vec run = crease.to().minus(crease.from());
    Vec a = onPage(crease.from().plus(run.scale(from)));
    Vec b = onPage(crease.from().plus(run.scale(to)));
    paper.path(new double[] {a.x(), a.y(), b.x(), b.y()}, tone.weight(), tone.line());
  }
}
