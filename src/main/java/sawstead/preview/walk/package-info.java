/**
 * The interview in a window: one question at a time, with its picture.
 *
 * <p><b>Enters:</b> a {@link sawstead.walk.Interview}. <b>Leaves:</b> a brief beside its answers.
 * <b>Guaranteed:</b> every answer is on disk before the next question is shown; everything can be
 * done with the keyboard. <b>Knows nothing of</b> stations.
 */
package sawstead.preview.walk;
