package sawstead.book;

import java.io.IOException;
import sawstead.drawing.page.Ink;
import sawstead.drawing.page.Paper;
import sawstead.solid.Bore;
import sawstead.solid.Box;
import sawstead.solid.Face;
import sawstead.solid.Feature;
import sawstead.solid.Opening;
import sawstead.solid.Outline;
import sawstead.solid.PocketBore;
import sawstead.solid.Recess;
import sawstead.solid.Vec;

/** A panel seen on its front, in the scale that its column allows. */
final class PanelView {
  private static final double RIM = 8;
  private static final double CROSS = 2.2;
  private static final double DASH = 2;
  private static final double DOT = 2.4;

  private final PanelCard card;
  private final Box bounds;
  private final double scale;

  /**
   * @param width of the column, points
   * @param tallest that it may be, points
   */
  PanelView(PanelCard card, double width, double tallest) {
    this.card = card;
    bounds = card.panel().outline().bounds();
    scale =
        Math.min((width - 2 * RIM) / bounds.size().x(), (tallest - 2 * RIM) / bounds.size().y());
  }

  /** Points, with some room above and below. */
  double height() {
    return bounds.size().y() * scale + 2 * RIM;
  }

  void draw(Paper paper, double x, double y) throws IOException {
    double left = x + RIM;
    double low = y + RIM;
    paper.shape(points(card.panel().outline(), left, low), 0.9, 0, Ink.INK, Ink.BIRCH);
    for (Feature feature : card.panel().features()) {
      feature(paper, feature, left, low);
    }
    for (Vec cross : card.crosses()) {
      cross(paper, left + cross.x() * scale, low + cross.y() * scale, cross.z() > 0);
    }
    dot(paper, left, low);
  }

  private void feature(Paper paper, Feature feature, double left, double low) throws IOException {
    if (feature instanceof Opening opening) {
      paper.shape(points(opening.outline(), left, low), 0.7, 0, Ink.INK, Ink.CHALK);
    } else if (feature instanceof Recess recess) {
      boolean front = recess.face() == Face.FRONT;
      double[] points = points(recess.outline(), left, low);
      paper.shape(points, 0.6, front ? 0 : DASH, Ink.COBALT, front ? Ink.DUST : null);
    } else if (feature instanceof Bore bore) {
      boolean seen = bore.through() || bore.face() == Face.FRONT;
      double[] points = points(bore.outline(), left, low);
      paper.shape(points, 0.6, seen ? 0 : DASH, Ink.INK, bore.through() ? Ink.CHALK : null);
    } else if (feature instanceof PocketBore pocket) {
      boolean front = pocket.direction().z() < 0;
      Vec end = pocket.at().plus(pocket.direction().scale(pocket.depth()));
      Outline bar =
          Outline.bar(pocket.at().x(), pocket.at().y(), end.x(), end.y(), pocket.diameter());
      paper.shape(points(bar, left, low), 0.6, front ? 0 : DASH, Ink.OCHRE, null);
    }
  }

  private double[] points(Outline outline, double left, double low) {
    double[] uv = outline.polygonised(true, Outline.ARC_ERROR);
    double[] xy = new double[uv.length];
    for (int k = 0; k < uv.length; k += 2) {
      xy[k] = left + (uv[k] - bounds.low().x()) * scale;
      xy[k + 1] = low + (uv[k + 1] - bounds.low().y()) * scale;
    }
    return xy;
  }

  private static void cross(Paper paper, double x, double y, boolean front) throws IOException {
    Ink ink = front ? Ink.INK : Ink.FAINT;
    double arm = front ? CROSS : CROSS * 0.7;
    paper.path(new double[] {x - arm, y, x + arm, y}, 0.5, ink);
    paper.path(new double[] {x, y - arm, x, y + arm}, 0.5, ink);
  }

  private static void dot(Paper paper, double x, double y) throws IOException {
    double[] round = new double[32];
    for (int k = 0; k < 16; k++) {
      round[2 * k] = x + DOT * Math.cos(k * Math.PI / 8);
      round[2 * k + 1] = y + DOT * Math.sin(k * Math.PI / 8);
    }
    paper.shape(round, 0.3, 0, Ink.COBALT, Ink.COBALT);
  }
}
