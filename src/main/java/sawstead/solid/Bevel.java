package sawstead.solid;

import java.util.List;
import java.util.Objects;

/**
 * A flat cut along a straight edge: a chamfer, or a bevel over the whole edge. It takes everything
 * beyond the plane through the line {@code acrossFace} inside the edge on the face and the line
 * {@code downEdge} below the face on the edge.
 *
 * <p>The edge runs from (fromU, fromV) to (toU, toV) with the panel on its left, as the edges of an
 * outline do, and the whole outline must lie on that side: the plane has no ends.
 *
 * @param fromU a point of the edge, mm
 * @param fromV a point of the edge, mm
 * @param toU another point of the edge, mm
 * @param toV another point of the edge, mm
 * @param face the face that loses its edge
 * @param acrossFace leg on the face, square to the edge, mm
 * @param downEdge leg on the edge, mm; at most the thickness
 */
public record Bevel(
    double fromU,
    double fromV,
    double toU,
    double toV,
    Face face,
    double acrossFace,
    double downEdge)
    implements Feature {
  /** Refuses legs that are none and an edge without length. */
  public Bevel {
    Objects.requireNonNull(face, "face");
    Outline.demandPositive("leg of a bevel across the face", acrossFace);
    Outline.demandPositive("leg of a bevel down the edge", downEdge);
    if (Corner.of(fromU, fromV).distance(Corner.of(toU, toV)) < Outline.SHORTEST_EDGE) {
      throw new SolidException("a bevel needs an edge with a length");
    }
  }

  /**
   * A bevel along one straight edge of an outline.
   *
   * @param outline of the panel
   * @param edge index of the corner that the edge leaves
   * @param face the face that loses its edge
   * @param acrossFace leg on the face, mm
   * @param downEdge leg on the edge, mm
   */
  public static Bevel alongEdge(
      Outline outline, int edge, Face face, double acrossFace, double downEdge) {
    if (edge < 0 || edge >= outline.corners().size() || outline.isArc(edge)) {
      throw new SolidException("a bevel runs along a straight edge, and edge " + edge + " is none");
    }
    Corner from = outline.corners().get(edge);
    Corner to = outline.next(edge);
    return new Bevel(from.u(), from.v(), to.u(), to.v(), face, acrossFace, downEdge);
  }

  @Override
  public String operation() {
    return "bevel";
  }

  @Override
  public void demandFits(Outline outline, double thickness) {
    if (downEdge > thickness) {
      throw new SolidException(
          "a bevel " + downEdge + " mm down the edge of a panel of " + thickness + " mm");
    }
    double length = Math.hypot(toU - fromU, toV - fromV);
    double[] uv = outline.polygonised(true, Outline.ARC_ERROR);
    for (int i = 0; i < uv.length; i += 2) {
      double left =
          ((toU - fromU) * (uv[i + 1] - fromV) - (toV - fromV) * (uv[i] - fromU)) / length;
      if (left < -Outline.SHORTEST_EDGE) {
        throw new SolidException(
            "a bevel needs the whole panel on one side of its edge, but (u = "
                + uv[i]
                + ", v = "
                + uv[i + 1]
                + ") lies "
                + -left
                + " mm beyond it");
      }
    }
  }

  @Override
  public List<Plane> planes(double thickness) {
    double length = Math.hypot(toU - fromU, toV - fromV);
    double outU = (toV - fromV) / length;
    double outV = -(toU - fromU) / length;
    double slope = Math.hypot(acrossFace, downEdge);
    double up = (face == Face.FRONT ? acrossFace : -acrossFace) / slope;
    double nu = outU * downEdge / slope;
    double nv = outV * downEdge / slope;
    double edgeW = face == Face.FRONT ? thickness - downEdge : downEdge;
    return List.of(new Plane(nu, nv, up, nu * fromU + nv * fromV + up * edgeW));
  }
}
