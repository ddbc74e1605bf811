/**
 * STL, the triangle file that every slicer and viewer reads.
 *
 * <p>Enters: closed meshes in mm, alone or as bodies at their places. Leaves: one binary or text
 * file. Guaranteed: facets are wound counter-clockwise from outside and carry unit normals; corners
 * that are one point in single precision are written with the same bytes; no facet has two equal
 * corners; what was closed stays closed. Knows nothing of what the bodies are.
 *
 * <p>Source of the layout: the stereolithography interface specification of 1989, as restated
 * (REF-FIL-01, REF-FIL-02 of the project's outside values). It also asks for positive coordinates;
 * readers do not, and we keep the frame of the report, so that a body can be put in its place.
 */
package sawstead.export.stl;
