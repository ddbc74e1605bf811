package sawstead.assembly;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import sawstead.joinery.Fastener;
import sawstead.joinery.FastenerKind;
import sawstead.solid.Body;
import sawstead.solid.Vec;

/**
 * A fastener, when it is driven and with what.
 *
 * @param fastener what is driven
 * @param step number of the step in which it is driven
 * @param use a tool whose whole envelope is free then; empty when none is
 * @param inTheWay when none is, the fewest things that are in the way of one, {@code floor}
 *     included
 * @param instead what else would do, where no tool of the user's own reaches it
 */
public record Driving(
    Fastener fastener, int step, Optional<ToolUse> use, List<String> inTheWay, Instead instead) {
  public Driving {
    Objects.requireNonNull(fastener, "fastener");
    Objects.requireNonNull(use, "use");
    Objects.requireNonNull(instead, "instead");
    inTheWay = List.copyOf(inTheWay);
  }

  /** Whether some tool reaches it at its step. */
  public boolean reachable() {
    return use.isPresent();
  }

  /**
   * The room that the tool takes up while it drives the fastener, its grip turned to where it is
   * free; station frame. None when no tool reaches it, or when a hinged part has to be held open,
   * which moves the fastener with it.
   */
  public List<Body> toolBodies() {
    if (use.isEmpty() || use.get().open().isPresent()) {
      return List.of();
    }
    boolean nut = fastener.kind() == FastenerKind.BOLT;
    Vec head = nut ? fastener.tip() : fastener.at();
    Vec back = nut ? fastener.axis() : fastener.axis().scale(-1);
    ToolPlace place = new ToolPlace(head, back);
    Tool tool = use.get().tool();
    List<Body> bodies = new ArrayList<>(place.barrels(tool));
    if (tool.grip().isPresent()) {
      bodies.addAll(place.grip(tool, use.get().angle()));
    }
    return bodies;
  }
}
