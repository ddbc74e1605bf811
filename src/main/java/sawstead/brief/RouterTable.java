package sawstead.brief;

import static java.util.Objects.requireNonNull;

import java.util.Optional;
import sawstead.measure.Measured;

/**
 * A router that hangs from a plate in a wing's top.
 *
 * @param side of the wing, LEFT or RIGHT
 * @param x of the bit from the blade plane, mm
 * @param y of the bit from the table's front edge, mm
 * @param plate the plate
 * @param ledge width of the ledge that the plate lies on, mm
 * @param rib height of the ribs under the top beside the opening, mm; 0 for none
 * @param body the router
 * @param bit greatest diameter of a bit, mm
 * @param above how far a bit stands above the plate at most, mm
 * @param sheet of the facing on the saw's fence
 */
public record RouterTable(
    Side side,
    Optional<Measured> x,
    Optional<Measured> y,
    Plate plate,
    Measured ledge,
    Measured rib,
    Body body,
    Measured bit,
    Measured above,
    String sheet) {

  /**
   * A router plate.
   *
   * @param length along y, mm
   * @param width along x, mm
   * @param thickness mm
   * @param radius of its corners, mm
   */
  public record Plate(Measured length, Measured width, Measured thickness, Measured radius) {
    public Plate {
      requireNonNull(length, "length");
      requireNonNull(width, "width");
      requireNonNull(thickness, "thickness");
      requireNonNull(radius, "radius");
    }
  }

  /**
   * What hangs below the plate: a base that stays, and a motor that goes up and down in it.
   *
   * @param base diameter of the base, mm
   * @param baseHeight mm
   * @param motor diameter of the motor, mm
   * @param motorLength mm
   * @param lift from the motor's lowest to its highest place, mm
   * @param mass with the plate, kg
   */
  public record Body(
      Measured base,
      Measured baseHeight,
      Measured motor,
      Measured motorLength,
      Measured lift,
      Measured mass) {
    public Body {
      requireNonNull(base, "base");
      requireNonNull(baseHeight, "baseHeight");
      requireNonNull(motor, "motor");
      requireNonNull(motorLength, "motorLength");
      requireNonNull(lift, "lift");
      requireNonNull(mass, "mass");
    }
  }

  public RouterTable {
    requireNonNull(side, "side");
    requireNonNull(x, "x");
    requireNonNull(y, "y");
    requireNonNull(plate, "plate");
    requireNonNull(ledge, "ledge");
    requireNonNull(rib, "rib");
    requireNonNull(body, "body");
    requireNonNull(bit, "bit");
    requireNonNull(above, "above");
    requireNonNull(sheet, "sheet");
  }
}
