package sawstead.layout;

/**
 * A kind of sheet material, for example measured 18 mm birch plywood. Parts are cut only from stock
 * of their own board.
 *
 * @param name how parts and stock refer to it
 * @param thickness measured thickness, mm
 * @param density mass per volume, kg/m³
 */
public record Board(String name, double thickness, double density) {
  /** Mass of a rectangle of this board, kg; sides in mm. */
  public double mass(double length, double width) {
    return length * width * thickness * density * 1e-9;
  }
}
