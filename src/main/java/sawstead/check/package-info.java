/**
 * Judges a station: what clashes, what fits by how much, what may break, tip, bind or break
 * through.
 *
 * <p><b>Enters:</b> a {@link sawstead.station.Station}. <b>Leaves:</b> a {@link
 * sawstead.check.Report}: clashes, free ways of envelopes, motions, fasteners with their steps,
 * margins, and findings, worst first. <b>Guaranteed:</b>
 *
 * <ol>
 *   <li>every finding has a severity, a stable rule, words and a remedy;
 *   <li>every pair of bodies that overlap by more than the contact tolerance is in {@code clashes};
 *   <li>an envelope that is enlarged by its reported gap plus 0.06 mm clashes, by plus 0.04 mm it
 *       does not;
 *   <li>the same station gives the same report.
 * </ol>
 *
 * <p><b>Looks at</b> nothing but the solids that will be cut, the space that things take up and the
 * measurements that they came from; knows nothing of how a part was designed, of files or of
 * terminals. Each check says in its Javadoc which rules it may report and which way it may err. To
 * add one: a class that implements {@code Check}, and a line in {@code Checks}.
 */
package sawstead.check;
