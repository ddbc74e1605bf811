package sawstead.brief;

import static java.util.Objects.requireNonNull;

import sawstead.measure.Measured;

/**
 * Something that stands out behind the table's rear edge.
 *
 * @param id short name: `motor`
 * @param left its left end as x, mm
 * @param right its right end as x, mm
 * @param out how far it stands out behind the table's rear edge, mm
 * @param top its top below the table's top, mm
 * @param bottom its lowest point below the table's top, mm
 * @param swings whether it swings with the blade's tilt
 */
public record Protrusion(
    String id,
    Measured left,
    Measured right,
    Measured out,
    Measured top,
    Measured bottom,
    boolean swings) {
  public Protrusion {
    requireNonNull(id, "id");
    requireNonNull(left, "left");
    requireNonNull(right, "right");
    requireNonNull(out, "out");
    requireNonNull(top, "top");
    requireNonNull(bottom, "bottom");
  }
}
