package sawstead.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import sawstead.preview.PreviewException;
import sawstead.preview.window.Memory;
import sawstead.preview.window.Window;

/** {@code show FILE}: opens the window. */
@Command(
    name = "show",
    mixinStandardHelpOptions = true,
    description =
        "Opens a window: the station in 3D, what is wrong with it, and the brief to edit.",
    footer = {"", "Exit codes: 0 fine, 2 no such file or no display, 3 a fault of the program."})
final class ShowCommand implements Callable<Integer> {
  @Parameters(
      paramLabel = "FILE",
      arity = "0..1",
      description = "The brief, a YAML file; the last one shown when left out.")
  private Path file;

  @Option(names = "--dark", description = "Dark look.")
  private boolean dark;

  @Override
  public Integer call() throws Refusal {
    Memory memory = Memory.ofUser();
    if (file == null) {
      file = memory.lastBrief().orElse(Path.of("the brief shown last"));
    }
    if (!java.nio.file.Files.isRegularFile(file)) {
      throw new Refusal(
          List.of(
              new Trouble(
                  "there is no such file",
                  file.toString(),
                  "check the name and the folder you are in")));
    }
    try {
      Window.show(file, dark || memory.dark());
    } catch (PreviewException e) {
      throw new Refusal(List.of(new Trouble(e.getMessage(), e.where(), e.remedy())));
    }
    return ExitCode.FINE;
  }
}
