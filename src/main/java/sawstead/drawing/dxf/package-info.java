/**
 * DXF in general: things on layers as a file that every drawing program reads.
 *
 * <p>Enters: a {@link sawstead.drawing.dxf.DxfDrawing}, mm. Leaves: one file in the version and
 * unit chosen. Guaranteed: arcs and circles are true, nothing is approximated. Knows nothing of
 * panels and sheets.
 *
 * <p>{@code EntitiesSection}, {@code TablesSection}, {@code BlocksSection}, {@code ObjectsSection}
 * and {@code HeaderSection} say a drawing in the format's terms through {@code Tags}. Source of the
 * format: the DXF reference, as documented (REF-FIL-03 to REF-FIL-08 of the project's outside
 * values).
 */
package sawstead.drawing.dxf;
