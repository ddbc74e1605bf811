/**
 * The tape: a measuring tape that is the slider of a motion or of the build.
 *
 * <p><b>Enters:</b> a {@link sawstead.preview.tape.Run} (what it measures, in which unit, where the
 * first contact is). <b>Leaves:</b> the parameter under the thumb. <b>Guaranteed:</b> works with
 * mouse and keys alike. <b>Knows nothing of</b> the scene.
 */
package sawstead.preview.tape;
