package sawstead.assembly;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import sawstead.joinery.Fastener;

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
}
