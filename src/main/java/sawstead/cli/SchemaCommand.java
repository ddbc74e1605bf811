package sawstead.cli;

import java.nio.charset.StandardCharsets;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import sawstead.intake.BriefSchema;
import sawstead.intake.UnitSchema;

/** {@code schema}: prints the JSON Schema of a brief. */
@Command(
    name = "schema",
    mixinStandardHelpOptions = true,
    description = "Prints the JSON Schema of a brief, with which editors complete and check it.")
final class SchemaCommand implements Callable<Integer> {
  private final Streams streams;

  @Option(names = "--unit", description = "Prints that of a unit file of your own instead.")
  private boolean unit;

  SchemaCommand(Streams streams) {
    this.streams = streams;
  }

  @Override
  public Integer call() {
    byte[] text = (unit ? UnitSchema.text() : BriefSchema.text()).getBytes(StandardCharsets.UTF_8);
    streams.out().write(text, 0, text.length);
    streams.out().flush();
    return ExitCode.FINE;
  }
}
