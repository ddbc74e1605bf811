package sawstead.cli;

import java.io.PrintWriter;

/**
 * Something that went wrong, in three parts.
 *
 * @param what what is wrong
 * @param where file and line, place in the brief, folder or command
 * @param remedy what to do
 */
record Trouble(String what, String where, String remedy) {
  void print(PrintWriter out, Paint paint) {
    out.println(paint.stop("stop") + "  " + what);
    out.println("      " + where);
    out.println("      " + remedy);
    out.flush();
  }
}
