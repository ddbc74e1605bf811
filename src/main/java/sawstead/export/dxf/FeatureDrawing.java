package sawstead.export.dxf;

import java.util.ArrayList;
import java.util.List;
import sawstead.drawing.dxf.Drawn;
import sawstead.drawing.dxf.Layer;
import sawstead.solid.Bevel;
import sawstead.solid.Bore;
import sawstead.solid.EdgeBore;
import sawstead.solid.Face;
import sawstead.solid.Feature;
import sawstead.solid.Mark;
import sawstead.solid.Opening;
import sawstead.solid.Outline;
import sawstead.solid.PocketBore;
import sawstead.solid.Recess;
import sawstead.solid.Vec;

/** How each kind of feature looks from the front. A kind that is not drawn here is an error. */
final class FeatureDrawing {
  // Height of a mark's text: small enough to stand on a 90 mm strip.
  private static final double MARK_HEIGHT = 6;

  private final LayerNames layers;

  FeatureDrawing(LayerNames layers) {
    this.layers = layers;
  }

  List<Drawn> of(Feature feature) {
    if (feature instanceof Opening opening) {
      return List.of(Drawn.of(layers.of("opening"), opening.outline()));
    }
    if (feature instanceof Recess recess) {
      Layer layer = layers.of(recess.operation(), recess.depth(), recess.face());
      return List.of(Drawn.of(layer, recess.outline()));
    }
    if (feature instanceof Bore bore) {
      Layer layer =
          bore.through() ? layers.through("bore") : layers.of("bore", bore.depth(), bore.face());
      return List.of(new Drawn.Round(layer, bore.u(), bore.v(), bore.diameter() / 2));
    }
    if (feature instanceof Bevel bevel) {
      return List.of(bevel(bevel));
    }
    if (feature instanceof EdgeBore bore) {
      Layer layer = layers.of("edge-bore");
      return List.of(shadow(layer, bore.at(), bore.direction(), bore.diameter(), bore.depth()));
    }
    if (feature instanceof PocketBore bore) {
      Face face = bore.direction().z() < 0 ? Face.FRONT : Face.BACK;
      Layer layer = layers.of("pocket", bore.depth(), face);
      return List.of(shadow(layer, bore.at(), bore.direction(), bore.diameter(), bore.depth()));
    }
    if (feature instanceof Mark mark) {
      return mark(mark);
    }
    throw new IllegalStateException("no drawing for " + feature.getClass().getSimpleName());
  }

  /** The line in which the bevel meets the face it is cut from. */
  private Drawn bevel(Bevel bevel) {
    double du = bevel.toU() - bevel.fromU();
    double dv = bevel.toV() - bevel.fromV();
    double length = Math.hypot(du, dv);
    double inU = -dv / length * bevel.acrossFace();
    double inV = du / length * bevel.acrossFace();
    return new Drawn.Line(
        layers.of("bevel", bevel.downEdge(), bevel.face()),
        bevel.fromU() + inU,
        bevel.fromV() + inV,
        bevel.toU() + inU,
        bevel.toV() + inV);
  }

  /** What a slanted or level bore covers, seen square to the face: its axis, a diameter wide. */
  private static Drawn shadow(Layer layer, Vec at, Vec direction, double diameter, double depth) {
    Vec end = at.plus(direction.scale(depth));
    if (Math.hypot(end.x() - at.x(), end.y() - at.y()) < Outline.SHORTEST_EDGE) {
      return new Drawn.Round(layer, at.x(), at.y(), diameter / 2);
    }
    return Drawn.of(layer, Outline.bar(at.x(), at.y(), end.x(), end.y(), diameter));
  }

  /** A mark's lines and points, and its text beside the first. */
  private List<Drawn> mark(Mark mark) {
    Layer layer = layers.of("mark");
    List<Drawn> drawn = new ArrayList<>();
    for (Mark.Stroke stroke : mark.strokes()) {
      boolean point = stroke.fromU() == stroke.toU() && stroke.fromV() == stroke.toV();
      drawn.add(
          point
              ? new Drawn.Dot(layer, stroke.fromU(), stroke.fromV())
              : new Drawn.Line(layer, stroke.fromU(), stroke.fromV(), stroke.toU(), stroke.toV()));
    }
    if (!mark.text().isBlank() && !mark.strokes().isEmpty()) {
      Mark.Stroke first = mark.strokes().get(0);
      drawn.add(new Drawn.Words(layer, mark.text(), first.fromU(), first.fromV(), MARK_HEIGHT));
    }
    return drawn;
  }
}
