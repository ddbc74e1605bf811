package sawstead.assembly;

import java.util.Optional;
import sawstead.solid.Vec;

/**
 * A tool in its place on a fastener.
 *
 * @param tool that drives it
 * @param angle of the grip about the fastener's axis, degrees, from 0 up to 360; the first found
 * @param grip unit direction in which the grip points, station frame; empty for a tool without one
 * @param open the motion and the angle that hinged parts are held at, such as a lid that stands
 *     open
 */
public record ToolUse(Tool tool, double angle, Optional<Vec> grip, Optional<String> open) {}
