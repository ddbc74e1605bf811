package sawstead.drawing.dxf;

import java.util.List;
import sawstead.solid.Box;
import sawstead.solid.Corner;
import sawstead.solid.Outline;

/** One thing on the drawing, mm, with its layer. Each kind says itself in the format's terms. */
public sealed interface Drawn {
  /** What it is drawn on. */
  Layer layer();

  /** Its bounds, mm. */
  Extents extents();

  /** Says itself through the section. */
  void writeTo(EntitiesSection section);

  /** An outline: a circle where it is one, else a closed polyline with bulges. */
  static Drawn of(Layer layer, Outline outline) {
    if (outline.isCircle()) {
      Box bounds = outline.bounds();
      double radius = bounds.size().x() / 2;
      return new Round(layer, bounds.centre().x(), bounds.centre().y(), radius);
    }
    Box bounds = outline.bounds();
    return new Ring(
        layer,
        outline.corners(),
        Extents.of(bounds.low().x(), bounds.low().y(), bounds.high().x(), bounds.high().y()));
  }

  /** A closed polyline. */
  record Ring(Layer layer, List<Corner> corners, Extents extents) implements Drawn {
    @Override
    public void writeTo(EntitiesSection section) {
      section.polyline(layer, corners);
    }
  }

  /** A circle. */
  record Round(Layer layer, double u, double v, double radius) implements Drawn {
    @Override
    public Extents extents() {
      return Extents.of(u - radius, v - radius, u + radius, v + radius);
    }

    @Override
    public void writeTo(EntitiesSection section) {
      section.circle(layer, u, v, radius);
    }
  }

  /** A straight line. */
  record Line(Layer layer, double fromU, double fromV, double toU, double toV) implements Drawn {
    @Override
    public Extents extents() {
      return Extents.of(fromU, fromV, toU, toV);
    }

    @Override
    public void writeTo(EntitiesSection section) {
      section.line(layer, fromU, fromV, toU, toV);
    }
  }

  /** A point. */
  record Dot(Layer layer, double u, double v) implements Drawn {
    @Override
    public Extents extents() {
      return Extents.of(u, v, u, v);
    }

    @Override
    public void writeTo(EntitiesSection section) {
      section.point(layer, u, v);
    }
  }

  /** One line of text from its lower left corner; its width is only estimated. */
  record Words(Layer layer, String text, double u, double v, double height) implements Drawn {
    @Override
    public Extents extents() {
      return Extents.of(u, v, u + text.length() * height, v + height);
    }

    @Override
    public void writeTo(EntitiesSection section) {
      section.text(layer, text, u, v, height);
    }
  }
}
