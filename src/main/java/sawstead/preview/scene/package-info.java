/**
 * The floor: a station as a 3D scene.
 *
 * <p><b>Enters:</b> a {@link sawstead.station.Station}, an {@link sawstead.preview.scene.Eye} that
 * says where one stands, an {@link sawstead.preview.scene.Arrangement} that says what is open,
 * built or spread. <b>Leaves:</b> JavaFX nodes. The nodes are in the station's own frame, in mm:
 * JavaFX's axes (right, down, away) are right-handed as the station's (right, away, up) are, so the
 * camera alone is turned and nothing is mirrored.
 *
 * <p><b>Guaranteed:</b> what is shown is the mesh that is written to files; {@code Eye.project} and
 * the camera agree (a pixel test compares them). <b>Knows nothing of</b> windows, files and briefs
 * as text.
 */
package sawstead.preview.scene;
