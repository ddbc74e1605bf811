package sawstead.joinery;

import java.util.List;
import java.util.Objects;
import sawstead.solid.Body;
import sawstead.solid.Outline;
import sawstead.solid.Placement;
import sawstead.solid.Vec;

/**
 * One screw, brad or bolt in its place.
 *
 * @param id {@code <first part>/<kind>-<number>}, unique in the station
 * @param kind what it is
 * @param joins ids of the parts that it passes through, in the order in which it meets them
 * @param at centre of the head's seat, station frame, mm
 * @param axis unit direction in which it is driven
 * @param length from the seat to the tip, mm
 * @param diameter over the thread or shank, mm
 * @param pilot diameter of the pilot hole, mm; 0 for none
 * @param headDiameter mm
 * @param glued true if the joint is glued as well
 * @param joint word of the joint it belongs to, such as {@code pocket}
 */
public record Fastener(
    String id,
    FastenerKind kind,
    List<String> joins,
    Vec at,
    Vec axis,
    double length,
    double diameter,
    double pilot,
    double headDiameter,
    boolean glued,
    String joint) {
  /** Refuses sizes that are none and makes the axis one long. */
  public Fastener {
    Objects.requireNonNull(id, "id");
    Objects.requireNonNull(kind, "kind");
    Objects.requireNonNull(at, "at");
    Objects.requireNonNull(joint, "joint");
    joins = List.copyOf(joins);
    axis = Math.abs(axis.length() - 1) > 1e-12 ? axis.unit() : axis;
    if (!(length > 0 && diameter > 0 && headDiameter >= 0 && pilot >= 0)
        || Double.isInfinite(length + diameter + headDiameter + pilot)) {
      throw new JoineryException(
          id + " needs a length and a diameter of more than 0 mm: " + length + ", " + diameter);
    }
  }

  /** The tip, mm. */
  public Vec tip() {
    return at.plus(axis.scale(length));
  }

  /**
   * Its shank as a cylinder from the head's seat to the tip, in its place; the circle is a polygon
   * around the true one, off by at most {@link Outline#ARC_ERROR}. The head is not in it.
   */
  public Body body() {
    return shank().cylinder(id, Placement.identity());
  }

  /** The shank from seat to tip with rounded ends. */
  Rod shank() {
    return new Rod(at, tip(), diameter / 2);
  }

  /** A ball around the head. */
  Rod head() {
    return new Rod(at, at, Math.max(headDiameter, diameter) / 2);
  }

  /** The same fastener with another id. */
  Fastener named(String other) {
    return new Fastener(
        other, kind, joins, at, axis, length, diameter, pilot, headDiameter, glued, joint);
  }
}
