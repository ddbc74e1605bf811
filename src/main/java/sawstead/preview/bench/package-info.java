/**
 * From the text of a brief to what can be shown, away from the window's thread.
 *
 * <p><b>Enters:</b> text as it is being typed. <b>Leaves:</b> immutable {@link
 * sawstead.preview.bench.Snapshot}s: first with the station, then with its report, or with what is
 * wrong and on which lines; and what changed from one report to the next, in words.
 * <b>Guaranteed:</b> only the newest text is answered; a fault of the program comes back as a flaw,
 * not as an exception. <b>Knows nothing of</b> JavaFX.
 */
package sawstead.preview.bench;
