/**
 * The report as JSON, format {@code sawstead-report/1}.
 *
 * <p><b>Enters:</b> a {@link sawstead.check.Report}. <b>Leaves:</b> UTF-8 JSON (RFC 8259) with
 * stable keys; mm, kg, N, degrees; arrays ordered by id (findings worst first, steps by number).
 * <b>Guaranteed:</b> every number is finite and none is a negative zero; numbers keep full double
 * precision, but digits that only rounding made are left out (see {@code Numbers}); the same report
 * gives the same bytes. <b>Knows nothing of</b> how anything was judged, or whether the files that
 * it names are there.
 */
package sawstead.export.report;
