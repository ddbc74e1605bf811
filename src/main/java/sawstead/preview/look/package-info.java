/**
 * The look: colours and their one file.
 *
 * <p><b>Enters:</b> {@code look.css}, where each colour has its name and its value once.
 * <b>Leaves:</b> the same colours for 3D materials and textures, light or dark. <b>Guaranteed:</b>
 * a colour that the style sheet does not name cannot be asked for without a failure that says so.
 * <b>Knows nothing of</b> stations.
 */
package sawstead.preview.look;
