/**
 * Lengths, angles and masses as people write them, and as the rest of the house computes with them.
 *
 * <p><b>Enters:</b> text or plain numbers: {@code 34-3/4}, {@code 19.05 mm ± 0.1}, {@code 1' 6"},
 * {@code 52 lb}.
 *
 * <p><b>Leaves:</b> doubles in millimetres, degrees and kilograms, with the band that was written
 * ({@link sawstead.measure.Parsed}); values that know where in a brief they came from and how far
 * they may be off ({@link sawstead.measure.Measured}); and text again, in millimetres or inch
 * fractions, together with what the rounding left over ({@link sawstead.measure.LengthFormat}).
 *
 * <p><b>Guaranteed:</b> one inch is exactly 25.4 mm, and the conversion is done in decimal before
 * it is rounded once to a double, so that {@code 3/4 in} and {@code 19.05 mm} are the very same
 * number. No text yields NaN or an infinity. Whatever cannot be read is refused with a sentence
 * that says what is wrong and one that says what to write ({@link
 * sawstead.measure.AmountFormatException}).
 *
 * <p><b>Knows nothing of</b> saws, sheets, files or the wood trade: whether a length is sensible is
 * for others to say.
 */
package sawstead.measure;
