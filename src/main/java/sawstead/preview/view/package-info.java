/**
 * The floor as a control: mouse, keys, flights, labels and pins over the 3D scene.
 *
 * <p><b>Enters:</b> a {@link sawstead.preview.scene.Floor}, findings to hang in it. <b>Leaves:</b>
 * pixels, and which body is under the pointer. <b>Guaranteed:</b> everything that the mouse can do
 * the keyboard can do as well. <b>Knows nothing of</b> text and files.
 */
package sawstead.preview.view;
