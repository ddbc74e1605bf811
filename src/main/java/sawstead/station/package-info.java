/**
 * From a brief to a station: everything that will be cut and everything that takes up space, in its
 * place.
 *
 * <p><b>Enters:</b> a {@code Brief}. <b>Leaves:</b> a {@link sawstead.station.Station}: panels,
 * bodies, fasteners, declared contacts, movers, build steps, figures with bands, and what the units
 * have to remark. <b>Guaranteed:</b>
 *
 * <ol>
 *   <li>heights close: roll + base + leg + top + saw = working height, to the last bit that doubles
 *       have;
 *   <li>every id is unique, every panel is cut from a sheet of the brief;
 *   <li>mates of our own units touch, and overlap by at most 0.001 mm;
 *   <li>a figure's band is the worst case over every measurement that the figure was seen to read;
 *   <li>the same brief gives the same station.
 * </ol>
 *
 * <p>The order of work: {@link sawstead.station.Levels} solves the heights, {@code Surveyor} the
 * floor plan, both into one {@link sawstead.station.Site}; units draw on one {@link
 * sawstead.station.Draft} in three rounds (place, cut, join); figures are computed by rebuilding.
 * When nothing can follow from a brief, a {@link sawstead.station.DesignException} says where the
 * cause stands and what to write instead; what can be built but should not be cut is a {@link
 * sawstead.station.Remark} or is found by the checks.
 *
 * <p><b>Knows nothing of</b> YAML, checks, files or pixels.
 */
package sawstead.station;
