package sawstead.solid;

/**
 * A half-space {@code nx x + ny y + nz z <= offset}: the material kept by a flat cut.
 *
 * @param nx unit normal, out of the material
 * @param ny unit normal
 * @param nz unit normal
 * @param offset mm
 */
record Plane(double nx, double ny, double nz, double offset) {}
