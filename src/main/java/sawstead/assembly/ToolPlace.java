package sawstead.assembly;

import java.util.ArrayList;
import java.util.List;
import sawstead.solid.Body;
import sawstead.solid.Corner;
import sawstead.solid.Layer;
import sawstead.solid.Outline;
import sawstead.solid.Placement;
import sawstead.solid.Solids;
import sawstead.solid.Stack;
import sawstead.solid.Vec;

/**
 * A tool's envelope as bodies at a head. Barrels are twelve-sided, around the true cylinder: by at
 * most 3.6 percent of the diameter larger, so a tool may be called blocked that just passes, never
 * free that does not.
 *
 * @param head the head's seat, station frame, mm
 * @param back unit direction from the head towards the tool
 */
record ToolPlace(Vec head, Vec back) {
  private static final int SIDES = 12;

  /** Direction of a grip at an angle: 0 is the station's x, or y where the axis runs along x. */
  Vec side(double degrees) {
    Vec reference = Math.abs(back.x()) < 0.9 ? new Vec(1, 0, 0) : new Vec(0, 1, 0);
    Vec u = reference.minus(back.scale(reference.dot(back))).unit();
    Vec v = back.cross(u);
    double angle = Math.toRadians(degrees);
    return u.scale(Math.cos(angle)).plus(v.scale(Math.sin(angle))).unit();
  }

  /** The barrels, from the head backwards. */
  List<Body> barrels(Tool tool) {
    List<Body> bodies = new ArrayList<>();
    Vec u = side(0);
    Vec v = back.cross(u);
    for (Tool.Barrel barrel : tool.barrels()) {
      bodies.add(
          new Body(
              tool.word(),
              new Stack(List.of(new Layer(round(barrel.diameter()), barrel.to() - barrel.from()))),
              new Placement(u, v, back, head.plus(back.scale(barrel.from())))));
    }
    return bodies;
  }

  /** The grip turned to an angle, and what leaves its end. */
  List<Body> grip(Tool tool, double degrees) {
    Tool.Grip grip = tool.grip().orElseThrow();
    Vec u = side(degrees);
    Vec v = back.cross(u);
    List<Body> bodies = new ArrayList<>();
    bodies.add(bar(tool.word(), u, v, 0, grip.out(), grip.width(), grip.from(), grip.to()));
    tool.tail()
        .ifPresent(
            tail -> {
              double middle = (grip.from() + grip.to()) / 2;
              double half = Math.min(tail.width(), grip.to() - grip.from()) / 2;
              bodies.add(
                  bar(
                      tool.word(),
                      u,
                      v,
                      grip.out(),
                      tail.length(),
                      tail.width(),
                      middle - half,
                      middle + half));
            });
    return bodies;
  }

  /** A bar along u that begins so far out, centred on v, between two distances from the head. */
  private Body bar(
      String word, Vec u, Vec v, double out, double length, double width, double from, double to) {
    return new Body(
        word,
        Solids.box(length, width, to - from),
        new Placement(
            u, v, back, head.plus(back.scale(from)).plus(u.scale(out)).plus(v.scale(-width / 2))));
  }

  private static Outline round(double diameter) {
    double radius = diameter / 2 / Math.cos(Math.PI / SIDES);
    List<Corner> corners = new ArrayList<>();
    for (int i = 0; i < SIDES; i++) {
      double angle = 2 * Math.PI * i / SIDES;
      corners.add(new Corner(radius * Math.cos(angle), radius * Math.sin(angle), 0));
    }
    return Outline.polygon(corners);
  }
}
