package sawstead.outside;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import sawstead.solid.Body;
import sawstead.solid.Motion;
import sawstead.solid.Slide;
import sawstead.solid.Turn;
import sawstead.solid.Vec;

/** Motions as the script {@code motions.mjs} reads them. */
final class KernelMotions {
  private KernelMotions() {}

  static void put(ObjectNode into, Body mover, Body obstacle, Motion motion) {
    KernelSolid.put(into.putObject("mover"), mover);
    KernelSolid.put(into.putObject("obstacle"), obstacle);
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
}
