package sawstead.brief;

import static java.util.Objects.requireNonNull;

import java.util.Optional;
import sawstead.measure.Measured;

/**
 * The rip fence.
 *
 * @param kind how it is carried
 * @param right greatest distance of its face to the right of the blade, mm
 * @param left the same to the left, mm
 * @param width of its profile, mm
 * @param height of its profile above the table, mm
 * @param front front rail
 * @param rear rear rail
 * @param runOut how far the rails run out to the right of their rest, mm; 0 unless extending
 * @param clampOut how far clamp and handle stand out in front of the front rail, mm
 * @param clampBelow how far clamp and handle hang below the table's top, mm
 */
public record Fence(
    FenceKind kind,
    Measured right,
    Measured left,
    Measured width,
    Measured height,
    Optional<Rail> front,
    Optional<Rail> rear,
    Measured runOut,
    Measured clampOut,
    Measured clampBelow) {
  public Fence {
    requireNonNull(kind, "kind");
    requireNonNull(right, "right");
    requireNonNull(left, "left");
    requireNonNull(width, "width");
    requireNonNull(height, "height");
    requireNonNull(front, "front");
    requireNonNull(rear, "rear");
    requireNonNull(runOut, "runOut");
    requireNonNull(clampOut, "clampOut");
    requireNonNull(clampBelow, "clampBelow");
  }
}
