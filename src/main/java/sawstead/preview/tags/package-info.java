/**
 * Findings as hang-tags, margins as bars.
 *
 * <p><b>Enters:</b> a {@link sawstead.check.Report}. <b>Leaves:</b> a column of tags, worst first,
 * and which of them was chosen. <b>Guaranteed:</b> each tag has sign, word and colour. <b>Knows
 * nothing of</b> the scene.
 */
package sawstead.preview.tags;
