/**
 * The small drawings of what is measured, drawn in a window.
 *
 * <p><b>Enters:</b> a {@link sawstead.walk.Drawing}. <b>Leaves:</b> pixels. <b>Guaranteed:</b> the
 * same strokes as the terminal shows. <b>Knows nothing of</b> stations and files.
 */
package sawstead.preview.sketch;
