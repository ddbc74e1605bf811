package sawstead.outside;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import sawstead.solid.Body;
import sawstead.solid.Mesh;
import sawstead.solid.Motion;
import sawstead.solid.Slide;
import sawstead.solid.Turn;
import sawstead.solid.Vec;

/** Motions as the script {@code motions.mjs} reads them. */
final class KernelMotions {
  private KernelMotions() {}

  static void put(ObjectNode into, Body mover, Body obstacle, Motion motion) {
    solid(into.putObject("mover"), mover);
    solid(into.putObject("obstacle"), obstacle);
    into.put("kind", motion instanceof Slide ? "slide" : "turn");
    vec(into.putArray("at"), motion instanceof Turn turn ? turn.at() : Vec.ZERO);
    vec(
        into.putArray("direction"),
        motion instanceof Turn turn ? turn.direction() : ((Slide) motion).direction());
    into.put("from", motion.from()).put("to", motion.to()).put("rest", motion.rest());
  }

  private static void vec(ArrayNode into, Vec vec) {
    into.add(vec.x()).add(vec.y()).add(vec.z());
  }

  private static void solid(ObjectNode into, Body body) {
    Mesh mesh = body.solid().mesh();
    ArrayNode vertices = into.putArray("vertices");
    for (int i = 0; i < mesh.vertexCount(); i++) {
      vertices.add(mesh.x(i)).add(mesh.y(i)).add(mesh.z(i));
    }
    ArrayNode triangles = into.putArray("triangles");
    for (int i = 0; i < mesh.triangleCount(); i++) {
      triangles.add(mesh.corner(i, 0)).add(mesh.corner(i, 1)).add(mesh.corner(i, 2));
    }
    ArrayNode placement = into.putArray("placement");
    for (double number : body.placement().columnMajor()) {
      placement.add(number);
    }
  }
}
