/**
 * The units of a station, one class each: stand, casters, saw, bolts, tray, vac, outfeed, wings,
 * ports, and the user's own panels.
 *
 * <p><b>Enters:</b> a {@code Site} with the solved sizes, and the unit's own wish. <b>Leaves:</b>
 * boards, bodies, cuts and joints on the draft. <b>Guaranteed:</b> a unit only uses the ids that it
 * documents and those that {@code StandUnit} names. To add one: a class that implements {@code
 * Unit}, and a line in {@link sawstead.station.unit.Units}.
 */
package sawstead.station.unit;
