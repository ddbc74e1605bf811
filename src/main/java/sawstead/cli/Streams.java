package sawstead.cli;

import java.io.Console;
import java.io.OutputStreamWriter;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import picocli.CommandLine.Help.Ansi;

/**
 * Where a command writes.
 *
 * @param out answers
 * @param err what went wrong, and progress
 * @param charset of text for people; JSON is always UTF-8
 * @param terminal whether a person looks on: colours and progress are wanted
 */
record Streams(PrintStream out, PrintStream err, Charset charset, boolean terminal) {

  /** The streams of the process. Colours follow NO_COLOR and its like, as picocli reads them. */
  static Streams ofProcess() {
    Console console = System.console();
    Charset charset = console == null ? StandardCharsets.UTF_8 : console.charset();
    return new Streams(System.out, System.err, charset, Ansi.AUTO.enabled());
  }

  PrintWriter outText() {
    return new PrintWriter(new OutputStreamWriter(out, charset), true);
  }

  PrintWriter errText() {
    return new PrintWriter(new OutputStreamWriter(err, charset), true);
  }
}
