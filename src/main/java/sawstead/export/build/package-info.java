/**
 * The folder that {@code build} writes: every format's files from one report, replaced whole or not
 * at all.
 *
 * <p><b>Enters:</b> a {@link sawstead.check.Report} and a folder. <b>Leaves:</b> {@code stl/},
 * {@code dxf/} and {@code report.json} in it. <b>Guaranteed:</b> all files are written from the
 * station in the report, and nothing is written when anything fails. To add a format: one class
 * that implements {@code Exporter}, one line in {@code BuildWriter}. <b>Knows nothing of</b> how a
 * format is written.
 */
package sawstead.export.build;
