package sawstead.cli;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.List;
import picocli.CommandLine;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.UnmatchedArgumentException;

/** Starts Sawstead from the command line. */
public final class Main {
  /** The property that asks for the details of an internal fault. */
  static final String TRACE = "sawstead.trace";

  private final Streams streams;

  Main(Streams streams) {
    this.streams = streams;
  }

  /** The process: ends with the exit code that {@code package-info} tells. */
  public static void main(String[] args) {
    System.exit(run(Streams.ofProcess(), args));
  }

  /** One command, on the given streams; whatever happens, an exit code comes back. */
  static int run(Streams streams, String... args) {
    Main main = new Main(streams);
    return main.run(main.commandLine(), args);
  }

  int run(CommandLine line, String... args) {
    try {
      return line.execute(args);
    } catch (Throwable fault) {
      // picocli hands on what is no Exception: out of memory, a stack that is too deep.
      return ourFault(fault);
    }
  }

  /** All commands. A new one is one line here. */
  CommandLine commandLine() {
    CommandLine line = new CommandLine(new Sawstead());
    line.addSubcommand(new CheckCommand(streams));
    line.addSubcommand(new BuildCommand(streams));
    line.addSubcommand(new SchemaCommand(streams));
    line.addSubcommand(new BreakdownCommand());
    line.addSubcommand(new SquareCommand(streams));
    line.addSubcommand(new PictureCommand(streams));
    line.addSubcommand(new ShowCommand());
    line.addSubcommand(new WalkCommand(streams, System.in));
    line.setOut(streams.outText());
    line.setErr(streams.errText());
    line.setColorScheme(
        CommandLine.Help.defaultColorScheme(streams.terminal() ? Ansi.ON : Ansi.OFF));
    line.setParameterExceptionHandler((e, a) -> badArguments(e));
    line.setExecutionExceptionHandler((e, c, r) -> failed(e));
    return line;
  }

  private int badArguments(ParameterException e) {
    CommandLine command = e.getCommandLine();
    String name = command.getCommandSpec().qualifiedName();
    String what = e.getMessage();
    String remedy = "see " + name + " --help";
    if (e instanceof UnmatchedArgumentException unmatched) {
      String word = unmatched.getUnmatched().get(0);
      boolean noCommand = command.getParent() == null && !word.startsWith("-");
      what = noCommand ? "there is no command " + word : name + " does not know " + word;
      List<String> near = unmatched.getSuggestions();
      if (!near.isEmpty()) {
        String words = String.join(" or ", near);
        remedy = "did you mean " + (noCommand ? name + " " : "") + words + "? " + remedy;
      }
    }
    tell(List.of(new Trouble(what, name, remedy)));
    return ExitCode.BAD_INPUT;
  }

  private int failed(Exception e) {
    if (e instanceof Refusal refusal) {
      tell(refusal.troubles());
      return ExitCode.BAD_INPUT;
    }
    return ourFault(e);
  }

  private int ourFault(Throwable fault) {
    tell(
        List.of(
            new Trouble(
                "a fault of the program, not of your brief: " + fault.getClass().getSimpleName(),
                "nothing was written",
                "please report it with the brief; java -D"
                    + TRACE
                    + "=true -jar sawstead.jar ... shows the details")));
    if (Boolean.getBoolean(TRACE)) {
      StringWriter details = new StringWriter();
      fault.printStackTrace(new PrintWriter(details, true));
      streams.errText().print(details);
      streams.errText().flush();
    }
    return ExitCode.OUR_FAULT;
  }

  private void tell(List<Trouble> troubles) {
    PrintWriter err = streams.errText();
    troubles.forEach(t -> t.print(err, new Paint(streams.terminal())));
  }
}
