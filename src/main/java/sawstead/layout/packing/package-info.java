/**
 * Rectangles on sheets, cut apart by edge-to-edge cuts.
 *
 * <p>Enters: a {@link sawstead.layout.packing.PackingProblem} in whole steps, with blades of no
 * width. Leaves: a {@link sawstead.layout.packing.Packing} and a proven {@link
 * sawstead.layout.packing.LowerBound}. Guaranteed: every copy of every piece lies on a sheet, none
 * overlap, each sheet can be cut apart from edge to edge, and the same problem, budget and seed
 * give the same packing on every machine. Knows nothing of wood, grain, blades, fences or files.
 */
package sawstead.layout.packing;
