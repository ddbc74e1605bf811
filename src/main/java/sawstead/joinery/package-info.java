/**
 * Joins boards: changes their outlines, cuts their dados, rabbets and pockets, and says which
 * fastener goes where.
 *
 * <p><b>Enters:</b> two {@link sawstead.joinery.Board boards} that touch (or, for a hinge, lie
 * beside each other), a {@link sawstead.joinery.Joint} and the {@link sawstead.joinery.Fixings} at
 * hand, with whatever is already driven into the boards.
 *
 * <p><b>Leaves:</b> {@link sawstead.joinery.Joined}: the two boards as they are after the joint,
 * the fasteners (head, direction, length, pilot), the bodies of a hinge with its axis, and in plain
 * words what found no room.
 *
 * <p><b>Guaranteed:</b> boards that did not overlap do not overlap after any joint; lengths follow
 * the thickness that was measured, never a nominal one; the same input gives the same fasteners
 * with the same ids. A fastener is never put where it would meet a groove, an opening, a bore, a
 * keep-clear box or another fastener that was named: it moves along its row, or it is left out and
 * missed in words.
 *
 * <p>Everything is in the station's frame, mm, unless a name says local. Density is kg/m3. Rules of
 * the trade are marked "common practice, no source"; the others name their REF id.
 *
 * <p><b>Knows nothing of</b> saws, units of a station, briefs or files, nor in which order the
 * fasteners are driven.
 */
package sawstead.joinery;
