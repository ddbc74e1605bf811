package sawstead.preview.scene;

import java.util.Objects;
import java.util.Optional;
import sawstead.solid.Axis;
import sawstead.solid.Placement;
import sawstead.solid.Vec;

/**
 * A plane that cuts the scene open; what lies beyond it is not shown.
 *
 * @param axis the plane is square to it; empty for no section
 * @param at where it cuts the axis, mm, station frame
 */
public record Section(Optional<Axis> axis, double at) {
  /** Nothing is cut. */
  public static final Section NONE = new Section(Optional.empty(), 0);

  /** Refuses a missing axis. */
  public Section {
    Objects.requireNonNull(axis, "axis");
  }

  /** How far a point of a body lies beyond the plane, mm; the body's frame stands at {@code at}. */
  Half in(Placement placement) {
    Vec normal = axis.orElseThrow().unit();
    // Seen from the infeed and from above one wants the near side away, not the far one.
    double sign = axis.get() == Axis.Y ? -1 : 1;
    Vec local = placement.inverse().turn(normal).scale(sign);
    double offset = sign * at - placement.origin().dot(normal) * sign;
    return new Half(local, offset);
  }

  /** The half-space n . p &lt;= offset in a body's frame. */
  record Half(Vec normal, double offset) {
    double beyond(Vec p) {
      return normal.dot(p) - offset;
    }
  }
}
