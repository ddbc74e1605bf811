/**
 * Exact solids of flat parts, and every question that is asked of two of them.
 *
 * <p>Enters: outlines, features, thicknesses, placements, motions, in mm and degrees. Leaves:
 * volume, centroid, closed mesh, convex pieces; overlap, distance, chords, sweeps. Knows nothing of
 * wood, joints, stations, files or screens. All geometry of overlap, distance and motion is here,
 * once, for panels, machines, boards on their way and walls alike: all are {@link
 * sawstead.solid.Body bodies}.
 *
 * <h2>What input must satisfy</h2>
 *
 * <ul>
 *   <li>Coordinates in a solid's own frame within 100 m of its origin; thicknesses and heights
 *       between 2^-10 mm and 100 m. Placements anywhere; within 100 m of the station's origin the
 *       rounding of doubles stays below 1e-9 mm.
 *   <li>Outlines enclose an area and neither touch nor cross themselves; edges below 2^-10 mm are
 *       merged. Whatever cannot exist is refused where it enters, in one plain sentence ({@link
 *       sawstead.solid.SolidException}).
 *   <li>Features may overlap, touch, repeat, reach beyond the outline, or part the panel; they may
 *       not leave nothing. That is found, and refused, when the geometry is first asked for.
 *   <li>Bevels run along an edge that has the whole outline on one side. Edge and pocket bores are
 *       kept in drawings but not cut from the solid: see {@link sawstead.solid.Solid#uncut()}.
 * </ul>
 *
 * <h2>What is guaranteed</h2>
 *
 * <ul>
 *   <li><b>Certified</b> (follows from the construction, to rounding): meshes are closed and
 *       oriented, an edge carrying four faces where parts touch; volume is that of the mesh; two
 *       runs give the same mesh. Partition pieces are disjoint and add up to the volume. Overlap
 *       volumes. The depth of two convex pieces. Distances, to 1e-6 mm, with their witness points.
 *       Contact intervals of slides. Intervals of a turn that are reported clear.
 *   <li><b>Conservative</b>: arcs are polygons on the side that adds material, 0.02 mm off at most,
 *       so nothing is missed that true arcs would meet, and gaps are reported up to 0.04 mm small.
 *       A turn may report a contact in an interval that could not be proven clear. A cover may
 *       reach 2^-18 mm beyond its solid.
 *   <li><b>Heuristic</b>: which pieces a cover has. So the depth of two bodies that are not convex,
 *       the greatest over their pairs of pieces, is never more than the least translation that
 *       parts them, and may be less; pieces of 0.1 mm and more keep it from vanishing.
 *   <li><b>{@code volumeExact}</b> has true arcs exactly where no other linework cuts an arc, and
 *       else to 0.02 mm squared a cut and mm of height.
 * </ul>
 *
 * <h2>From features to a solid</h2>
 *
 * <ol>
 *   <li>{@code Trace}, {@code Ring}: arcs become polygons that remember their circle; corners are
 *       rounded to a grid of 2^-20 mm, so that signs of areas are exact afterwards.
 *   <li>{@code Storeys}: heights at which the section changes cut w into levels; each ring adds or
 *       removes material over some of them.
 *   <li>{@code GridSlabs}, if all rings are axis-parallel: their coordinates are the lines of a
 *       grid of which each ring covers whole cells.
 *   <li>Otherwise {@code Linework}: all rings are noded on the grid by snap rounding (J. Hobby,
 *       "Practical segment intersection with finite precision output", 1999, as JTS has it); each
 *       edge keeps the rings that run along it an odd number of times, and goes if there are none.
 *   <li>{@code Cells}: faces of the linework, classified by flooding from outside: crossing an edge
 *       changes membership of exactly the edge's rings. A point test against the rings as they were
 *       would disagree with linework that snapping has moved.
 *   <li>{@code CellTriangles}, {@code Plan}: each cell is triangulated once for all levels, in-line
 *       corners kept, so triangles share whole edges or nothing.
 *   <li>{@code Slabs}: columns over triangles; volume is area times height. {@code SlabMesh}: a lid
 *       where material ends upward or downward, a wall where it ends sideways.
 *   <li>{@code Complex}, {@code ComplexCut}: for bevels, columns become cells that share faces and
 *       edges; a cut splits each edge once for all around it, so there are no T-junctions.
 *   <li>{@code Partition}, {@code Cover}, {@code Growth}, {@code Wedge}: convex pieces, disjoint
 *       ones for volumes, few large ones for depth, distance and motion.
 * </ol>
 *
 * <h2>From two bodies to an answer</h2>
 *
 * <ol>
 *   <li>{@code BoxSweep}: pairs whose boxes meet.
 *   <li>{@code Penetration} on covers with round holes filled; only a pair that then clashes is
 *       looked at with its holes open, which costs tens of times as much.
 *   <li>{@code Clipper}: what two pieces share, by half-spaces, on arrays used again.
 *   <li>{@code Gjk} for distance, {@code FeatureDistance} if rounding stops it.
 *   <li>{@code SweepRun} with {@code SlideSweep} (closed form) or {@code TurnSweep} (planes over
 *       intervals, {@code TurnHeights}) and {@code TurnClearance}.
 * </ol>
 */
package sawstead.solid;
