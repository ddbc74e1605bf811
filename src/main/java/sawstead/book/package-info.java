/**
 * The build book: what comes next, from where, held by what.
 *
 * <p><b>Enters:</b> a {@link sawstead.check.Report}. <b>Leaves:</b> {@code build-book.pdf}: the
 * station, then a drawing and the words of every step, then every panel with the places of what is
 * cut and driven into it. <b>Guaranteed:</b> every step of the report's plan, every panel of the
 * station and every fastener is in it once; what is drawn are the solids themselves, with hidden
 * lines left out. <b>Knows nothing of</b> sheets, other files and windows.
 *
 * <p>Pages are in points from their lower left corner, solids in mm in the frame of the station.
 */
package sawstead.book;
