package sawstead.brief;

import static java.util.Objects.requireNonNull;

import sawstead.measure.Measured;

/**
 * A zero-clearance insert that is to be built.
 *
 * @param id first word of its part's id
 * @param blade id of the blade that it is for
 * @param sheet it is cut from
 * @param fit gap all round in the throat, mm
 * @param knifeSlot whether it is slotted for the riving knife or splitter
 */
public record InsertWish(String id, String blade, String sheet, Measured fit, boolean knifeSlot) {
  public InsertWish {
    requireNonNull(id, "id");
    requireNonNull(blade, "blade");
    requireNonNull(sheet, "sheet");
    requireNonNull(fit, "fit");
  }
}
