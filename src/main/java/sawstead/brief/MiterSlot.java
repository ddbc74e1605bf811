package sawstead.brief;

import static java.util.Objects.requireNonNull;

import sawstead.measure.Measured;

/**
 * A slot in the table.
 *
 * @param at its centre from the blade plane, + right, mm
 * @param width mm
 * @param depth mm
 * @param kind plain, with a T, or tabbed
 * @param footWidth widest of bar or washer, mm; the slot's width when plain
 * @param footHeight height of the T at the floor of the slot, mm; 0 when plain
 */
public record MiterSlot(
    Measured at,
    Measured width,
    Measured depth,
    SlotKind kind,
    Measured footWidth,
    Measured footHeight) {
  public MiterSlot {
    requireNonNull(at, "at");
    requireNonNull(width, "width");
    requireNonNull(depth, "depth");
    requireNonNull(kind, "kind");
    requireNonNull(footWidth, "footWidth");
    requireNonNull(footHeight, "footHeight");
  }
}
