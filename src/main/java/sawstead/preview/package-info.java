/**
 * See it before cutting: pictures and the window.
 *
 * <p><b>Enters:</b> a brief, its {@link sawstead.station.Station} and its {@link
 * sawstead.check.Report}. <b>Leaves:</b> pixels: a picture file, or a window in which the brief can
 * be changed. <b>Guaranteed:</b> a machine without a display, or one that cannot draw in three
 * dimensions, is told so in a plain sentence; nothing that takes long runs on the window's thread.
 * <b>Knows nothing of</b> file formats of parts, nor of the command line.
 *
 * <p>{@code look} has the colours, {@code scene} the floor, {@code picture} pictures without a
 * window.
 */
package sawstead.preview;
