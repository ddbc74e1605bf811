/**
 * How far a squaring fence is off square, from cuts or measurements, and how to move it.
 *
 * <p><b>Frame:</b> seen from above, the operator stands below: x to the right, y away from the
 * operator. The blade cuts along y. The squaring fence lies along x on the operator's side of the
 * stock. Its error is the angle by which it is turned counter-clockwise from square, radians: with
 * a positive error its right end lies too far from the operator.
 *
 * <p><b>Enters:</b> strip widths of five cuts, the sides of a triangle, or a gap at a try square,
 * with what the instrument may be off. <b>Leaves:</b> a {@link sawstead.squaring.Squareness}: the
 * error with its standard uncertainty; an {@link sawstead.squaring.Adjustment} of the fence at a
 * distance from its pivot; a stack of feeler gauges. <b>Guaranteed:</b> in each of the eight
 * conventions (which end the pivot is at, on which side of the blade the board stays and so which
 * way it is turned, which end of the strip is called A) following the advice removes the error; an
 * adjustment that is smaller than its own uncertainty is called noise.
 *
 * <p>Lengths mm, angles radians. <b>Knows nothing of</b> saws, sleds, briefs or words.
 */
package sawstead.squaring;
