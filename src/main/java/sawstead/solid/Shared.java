package sawstead.solid;

import java.util.ArrayList;
import java.util.List;

/** The material that two bodies would share, as solids that can be drawn. */
public final class Shared {
  private Shared() {}

  /**
   * The meshes of the convex pieces of what two bodies share, station frame, mm; disjoint but for
   * their faces. None when the bodies are apart or only touch. Their volumes add up to {@link
   * Overlap#volume()}.
   */
  public static List<Mesh> of(Body a, Body b) {
    return Overlap.between(a, b).map(Shared::of).orElse(List.of());
  }

  /** The same of an overlap that was found already. */
  public static List<Mesh> of(Overlap overlap) {
    List<Mesh> meshes = new ArrayList<>();
    Clipper clipper = new Clipper();
    for (Piece p : overlap.a().partition()) {
      for (Piece q : overlap.b().partition()) {
        if (Penetration.boxesOverlap(p, q, 0)) {
          Piece shared = clipper.cut(p, planes(q));
          if (shared != null) {
            meshes.add(mesh(shared));
          }
        }
      }
    }
    return meshes;
  }

  private static List<Plane> planes(Piece piece) {
    List<Plane> planes = new ArrayList<>();
    for (int f = 0; f < piece.planes.length; f += 4) {
      planes.add(
          new Plane(
              piece.planes[f], piece.planes[f + 1], piece.planes[f + 2], piece.planes[f + 3]));
    }
    return planes;
  }

  /** Each face of a convex piece as a fan. */
  private static Mesh mesh(Piece piece) {
    List<Integer> corners = new ArrayList<>();
    for (int f = 0; f < piece.faceCount(); f++) {
      int first = piece.starts[f];
      for (int k = first + 1; k + 1 < piece.starts[f + 1]; k++) {
        corners.addAll(List.of(piece.loops[first], piece.loops[k], piece.loops[k + 1]));
      }
    }
    return new Mesh(piece.points.clone(), corners.stream().mapToInt(Integer::intValue).toArray());
  }
}
