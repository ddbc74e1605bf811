package sawstead.outside;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import sawstead.solid.Body;
import sawstead.solid.Mesh;

/** A body as the scripts of the independent kernel read it. */
public final class KernelSolid {
  private KernelSolid() {}

  /** Writes its mesh, in its own frame, and its placement. */
  public static void put(ObjectNode into, Body body) {
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
