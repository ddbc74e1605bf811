/**
 * DXF, the drawing that routers and other programs read: one panel, flat, seen from its front.
 *
 * <p>Enters: a panel and its id. Leaves: one file with the outline and every feature as closed
 * polylines with true arcs, circles and lines, in the panel's own u and v, on layers that say
 * operation, depth and face; outside them a label and a grain arrow. Guaranteed: nothing is
 * approximated, and nothing that is in the panel is left out. Knows nothing of sheets.
 *
 * <p>A recess or groove that runs beyond the outline is drawn as far as it runs. What is cut from
 * the back is drawn as seen through the panel from the front, not mirrored.
 *
 * <p>How a file comes about: {@link sawstead.export.dxf.DxfWriter} conducts; {@code PanelDrawing}
 * turns the panel into things on layers that {@code LayerNames} names; {@link
 * sawstead.drawing.dxf.DxfFile} says them in the format's terms.
 */
package sawstead.export.dxf;
