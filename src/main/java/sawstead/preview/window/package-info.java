/**
 * The window: floor, hang-tags, tape and brief put together.
 *
 * <p><b>Enters:</b> the file of a brief. <b>Leaves:</b> what a person wants from it: the brief
 * saved, the files of a build written. <b>Guaranteed:</b> reading, designing, checking and writing
 * happen on threads of their own; the window's thread only shows what they hand over. A file that
 * is malformed, changed or gone is told in words, and what stood on the floor before stays.
 * <b>Knows nothing of</b> geometry.
 */
package sawstead.preview.window;
