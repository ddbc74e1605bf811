package sawstead.brief;

import static java.util.Objects.requireNonNull;

/**
 * A tool that drives something, by the room that it takes up behind a fastener's head, hands
 * included; mm.
 *
 * @param owned whether the user has one
 * @param power what feeds it
 * @param bit of the bit, nose, shaft or socket between the head and the tool's body
 * @param body of the body along the same axis, handle or hand included
 * @param width across the body
 * @param grip from the axis to the end of what stands out to one side, battery or hand included; 0
 *     where nothing does
 */
public record DriveTool(
    boolean owned, Power power, double bit, double body, double width, double grip) {
  /** Refuses a tool of no size. */
  public DriveTool {
    requireNonNull(power, "power");
    if (!(bit > 0 && body > 0 && width > 0 && grip >= 0)) {
      throw new IllegalArgumentException(
          "a tool has a length and a width: " + bit + ", " + body + ", " + width + ", " + grip);
    }
  }
}
