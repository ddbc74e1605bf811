/**
 * Pictures of a station without a window, for scripts and for the README.
 *
 * <p><b>Enters:</b> a {@link sawstead.check.Report}, a stance and a size. <b>Leaves:</b> a PNG file
 * with the station's name and working height as caption. <b>Knows nothing of</b> windows.
 */
package sawstead.preview.picture;
