/**
 * Formulas of a user's own units: sums with named numbers, such as {@code width - 2 * wall}.
 *
 * <p>Enters: text in the Common Expression Language (CEL), an open standard, and what its names
 * stand for. Leaves: a number or a yes or no.
 *
 * <p>Guaranteed: a formula cannot run code, open files, loop or call itself; its cost is bounded by
 * its length, which is bounded too. Whole numbers count as decimals, so that {@code 1 / 2} is a
 * half. Angles are degrees.
 *
 * <p>Knows nothing of briefs, stations or files.
 */
package sawstead.formula;
