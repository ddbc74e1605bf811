/**
 * Pages of paper in general, as PDF.
 *
 * <p>Enters: lines, words, shapes and pictures with their place on a page, points from its lower
 * left corner. Leaves: pages of a {@link sawstead.drawing.page.Booklet}. Guaranteed: the faces are
 * embedded, fractions are set as fractions, and a character that the faces lack becomes a question
 * mark. Knows nothing of panels and sheets.
 */
package sawstead.drawing.page;
