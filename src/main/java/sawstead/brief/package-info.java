/**
 * What a woodworker wrote down, as immutable values.
 *
 * <p><b>Enters:</b> nothing but values; the reader of briefs makes them. <b>Leaves:</b> one record
 * a section of the file, with the same names as the file's keys wherever a key is a word of its
 * own. <b>Guaranteed:</b> every length is mm, every mass kg, every angle degrees, whatever the file
 * was written in; every measured value carries its band and the path at which it stands; lists are
 * copies. What the saw, the vac, the sheets and the casters do not say has been filled with a
 * typical value ({@code Origin.DEFAULT}) or, for {@code unknown}, with the same value and a wide
 * band ({@code Origin.UNKNOWN}); what is a wish for the design stays empty, and the design decides
 * it. <b>Knows nothing of</b> YAML, panels, checks or files.
 *
 * <h2>Directions</h2>
 *
 * x is from the blade plane to the right, y from the table's front edge away from the operator,
 * {@code below} is down from the table's top. Where a rectangle is given by {@code left}, {@code
 * right}, {@code front}, {@code rear}, left and right are distances from the blade plane, both
 * positive outward, and front and rear are distances from the table's front edge, both positive
 * away from the operator.
 */
package sawstead.brief;
