package sawstead.brief;

import static java.util.Objects.requireNonNull;

import java.util.List;
import java.util.Optional;
import sawstead.measure.Measured;

/**
 * A sheet of plywood (or other board) at hand.
 *
 * @param name how the brief calls it
 * @param length mm
 * @param width mm
 * @param nominal its trade name, such as 3/4 or 18 mm
 * @param thickness as measured, mm
 * @param density kg per cubic metre
 * @param grainAlongLength whether the face grain runs along the length
 * @param good which face of its panels is the good one
 * @param price a sheet, in the user's money
 * @param trim cut off every factory edge, mm
 * @param quantity how many there are; empty when more can be bought
 * @param offcuts rectangles of it left from earlier work
 */
public record Sheet(
    String name,
    Measured length,
    Measured width,
    String nominal,
    Measured thickness,
    Measured density,
    boolean grainAlongLength,
    GoodSide good,
    Optional<Double> price,
    Measured trim,
    Optional<Integer> quantity,
    List<SheetOffcut> offcuts) {
  public Sheet {
    requireNonNull(name, "name");
    requireNonNull(length, "length");
    requireNonNull(width, "width");
    requireNonNull(nominal, "nominal");
    requireNonNull(thickness, "thickness");
    requireNonNull(density, "density");
    requireNonNull(good, "good");
    requireNonNull(price, "price");
    requireNonNull(trim, "trim");
    requireNonNull(quantity, "quantity");
    offcuts = List.copyOf(offcuts);
  }
}
