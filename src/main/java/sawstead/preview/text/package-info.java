/**
 * The brief as text: the file it came from, the editor with what is wrong at its lines, undo.
 *
 * <p><b>Enters:</b> a file, flaws with line numbers. <b>Leaves:</b> text as typed, and the same
 * bytes to the file. <b>Guaranteed:</b> nothing that was typed is lost when the file changes or
 * goes away; a file is written whole or not at all, with its line ends as they were. <b>Knows
 * nothing of</b> what the text means.
 */
package sawstead.preview.text;
