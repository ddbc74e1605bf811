package sawstead.cli;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine;

/**
 * What a command said, and its exit code.
 *
 * @param code exit code
 * @param out its answers
 * @param err its complaints
 */
record Captured(int code, String out, String err) {

  /** Runs a command line in this process, as if its output were not a terminal. */
  static Captured run(String... args) {
    return run(false, args);
  }

  /** Runs a command line in this process. */
  static Captured run(boolean terminal, String... args) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ByteArrayOutputStream err = new ByteArrayOutputStream();
    int code = Main.run(streams(out, err, terminal), args);
    return of(code, out, err);
  }

  /** Runs a command that the program does not have, for what happens when one breaks. */
  static Captured runBroken(Callable<Integer> command) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ByteArrayOutputStream err = new ByteArrayOutputStream();
    Main main = new Main(streams(out, err, false));
    CommandLine line = main.commandLine();
    line.addSubcommand("broken", CommandLine.Model.CommandSpec.wrapWithoutInspection(command));
    return of(main.run(line, "broken"), out, err);
  }

  private static Captured of(int code, ByteArrayOutputStream out, ByteArrayOutputStream err) {
    return new Captured(
        code, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
  }

  private static Streams streams(
      ByteArrayOutputStream out, ByteArrayOutputStream err, boolean terminal) {
    return new Streams(
        new PrintStream(out, true, StandardCharsets.UTF_8),
        new PrintStream(err, true, StandardCharsets.UTF_8),
        StandardCharsets.UTF_8,
        terminal);
  }

  List<String> outLines() {
    return out.lines().toList();
  }

  List<String> errLines() {
    return err.lines().toList();
  }
}
