package sawstead.cli;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.IVersionProvider;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** What stands before the first word of a command line. */
@Command(
    name = "sawstead",
    mixinStandardHelpOptions = true,
    versionProvider = Sawstead.Version.class,
    description =
        "From a woodworker's own measurements to a table saw station that is proven to fit.",
    commandListHeading = "%nCommands:%n",
    footer = {"", "Exit codes: 0 fine, 1 do not cut, 2 bad input, 3 a fault of the program."})
final class Sawstead implements Callable<Integer> {
  @Spec private CommandSpec spec;

  /** The version of the jar. */
  static final class Version implements IVersionProvider {
    @Override
    public String[] getVersion() {
      String version = Sawstead.class.getPackage().getImplementationVersion();
      return new String[] {"sawstead " + (version == null ? "(not from a jar)" : version)};
    }
  }

  @Override
  public Integer call() {
    throw new ParameterException(spec.commandLine(), "A command is missing");
  }
}
