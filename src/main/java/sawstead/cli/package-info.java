/**
 * The door: arguments in, an exit code and text or JSON out.
 *
 * <p><b>Enters:</b> the words of a command line. <b>Leaves:</b> text for people on the output, or
 * JSON for machines; what went wrong on the error output, in three parts (what, where, what to do).
 * <b>Guaranteed:</b> exit code 0 fine, 1 findings that forbid cutting, 2 bad input (usage
 * included), 3 our fault; never a stack trace unless {@code -Dsawstead.trace=true} asks for one;
 * colours and progress only on a terminal. <b>Knows nothing of</b> geometry.
 */
package sawstead.cli;
