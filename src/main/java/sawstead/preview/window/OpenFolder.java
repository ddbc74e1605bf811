package sawstead.preview.window;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;

/** Shows a folder in whatever program the system has for it. */
final class OpenFolder {
  private OpenFolder() {}

  /** False if the system has no such program. */
  static boolean open(Path folder) {
    try {
      new ProcessBuilder(command(System.getProperty("os.name", ""), folder.toString()))
          .redirectErrorStream(true)
          .redirectOutput(ProcessBuilder.Redirect.DISCARD)
          .start();
      return true;
    } catch (IOException noSuchProgram) {
      return false;
    }
  }

  static List<String> command(String system, String folder) {
    String name = system.toLowerCase(Locale.ROOT);
    String program =
        name.contains("win") ? "explorer.exe" : name.contains("mac") ? "open" : "xdg-open";
    return List.of(program, folder);
  }
}
