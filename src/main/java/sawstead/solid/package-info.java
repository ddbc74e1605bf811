/**
 * Exact solids: outlines, features and placements enter; volume, convex pieces, mesh, overlap,
 * distance and sweep leave. Knows nothing of wood, files or stations.
 */
package sawstead.solid;
