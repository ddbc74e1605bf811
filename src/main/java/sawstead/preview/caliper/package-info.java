/**
 * Measuring in the scene: what lies under the pointer, and how far it is from something else.
 *
 * <p><b>Enters:</b> bodies where they now stand, points on them. <b>Leaves:</b> faces and edges,
 * distances and angles. <b>Guaranteed:</b> a distance is that of the exact faces and edges of the
 * kernel's meshes, not of the pixels that were clicked. <b>Knows nothing of</b> JavaFX.
 */
package sawstead.preview.caliper;
