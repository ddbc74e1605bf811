package sawstead.check;

import java.util.Objects;
import sawstead.joinery.Fastener;

/**
 * A fastener and when it is driven.
 *
 * @param fastener what is driven
 * @param step number of the step that brings the last of its parts; 0 when no step names them
 * @param reachable whether a bit in line with it has room behind the head at that step
 */
public record Driving(Fastener fastener, int step, boolean reachable) {
  public Driving {
    Objects.requireNonNull(fastener, "fastener");
  }
}
