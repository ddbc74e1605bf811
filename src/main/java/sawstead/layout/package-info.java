/**
 * From parts to a cut plan: which part comes from which sheet, by which cuts, in which order.
 *
 * <p>Enters: a {@link sawstead.layout.CutRequest} (parts, stock, kerfs, limits of the saw), mm and
 * kg. Leaves: a {@link sawstead.layout.CutPlan} with a proven lower bound beside it. Guaranteed:
 * {@link sawstead.layout.PlanCheck}, written apart from the planner, has replayed every plan before
 * it leaves; the same request, budget and seed give the same plan. Knows nothing of stations,
 * briefs, solids or windows.
 */
package sawstead.layout;
