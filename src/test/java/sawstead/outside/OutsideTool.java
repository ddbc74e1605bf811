package sawstead.outside;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Assumptions;

/**
 * Runs the outside programs that judge our results; see the package's description.
 *
 * <p>Each call waits for the program to end and hands back what it printed. A program that ends
 * with an exit code other than 0, or not within {@value #LIMIT_SECONDS} seconds, fails the test
 * with its command line and output. The limit only guards against a program that hangs.
 */
public final class OutsideTool {
  private static final String REQUIRED = "sawstead.toolsRequired";
  private static final int LIMIT_SECONDS = 300;

  private OutsideTool() {}

  /** Runs Debian's {@code admesh}, which reads, checks and measures STL files. */
  public static Answer admesh(Object... arguments) {
    return run(Tools.ADMESH, List.of(), arguments);
  }

  /** Runs a script of {@code src/test/python} with a Python that has {@code ezdxf}. */
  public static Answer python(String script, Object... arguments) {
    return run(Tools.PYTHON, List.of(script("python", script)), arguments);
  }

  /** Runs a script of {@code src/test/node} with the packages pinned there. */
  public static Answer node(String script, Object... arguments) {
    return run(Tools.NODE, List.of(script("node", script)), arguments);
  }

  /** The folder that holds {@code pom.xml}. */
  public static Path project() {
    return Path.of(System.getProperty("basedir", "")).toAbsolutePath();
  }

  private static String script(String language, String name) {
    Path path = project().resolve("src/test").resolve(language).resolve(name);
    if (!Files.isRegularFile(path)) {
      throw new AssertionError("no such script: " + path);
    }
    return path.toString();
  }

  static Answer run(Tool tool, List<String> before, Object... arguments) {
    Optional<String> program = tool.program();
    if (program.isEmpty()) {
      return missing(tool);
    }
    List<String> command = new ArrayList<>();
    command.add(program.get());
    command.addAll(before);
    for (Object argument : arguments) {
      command.add(argument.toString());
    }
    Ended ended = end(command, Duration.ofSeconds(LIMIT_SECONDS));
    if (ended.code() != 0) {
      Assertions.fail(
          String.join(" ", command)
              + (ended.inTime() ? " ended with code " + ended.code() : " did not end in time")
              + "\n"
              + ended.output()
              + "\n"
              + ended.complaints());
    }
    return new Answer(String.join(" ", command), ended.output(), ended.complaints());
  }

  private static Answer missing(Tool tool) {
    String message = "outside check left out: " + tool.name() + " is missing. " + tool.remedy();
    if (Boolean.getBoolean(REQUIRED)) {
      throw new AssertionError(message);
    }
    Assumptions.abort(message);
    throw new IllegalStateException("an aborted test goes on");
  }

  /** How a program ended; {@code code} is -1 when it had to be stopped. */
  record Ended(int code, boolean inTime, String output, String complaints) {}

  /** Runs a command to its end, or stops it at the limit; its output goes through files. */
  static Ended end(List<String> command, Duration limit) {
    try {
      // Files rather than pipes: a full pipe would block a program that nobody reads from.
      Path output = Files.createTempFile("outside", ".out");
      Path complaints = Files.createTempFile("outside", ".err");
      try {
        Process process =
            new ProcessBuilder(command)
                .directory(project().toFile())
                .redirectInput(ProcessBuilder.Redirect.from(Path.of("/dev/null").toFile()))
                .redirectOutput(output.toFile())
                .redirectError(complaints.toFile())
                .start();
        boolean inTime = process.waitFor(limit.toMillis(), TimeUnit.MILLISECONDS);
        if (!inTime) {
          process.destroyForcibly().waitFor();
        }
        int code = inTime ? process.exitValue() : -1;
        return new Ended(
            code,
            inTime,
            Files.readString(output, StandardCharsets.UTF_8),
            Files.readString(complaints, StandardCharsets.UTF_8));
      } finally {
        Files.deleteIfExists(output);
        Files.deleteIfExists(complaints);
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("interrupted while waiting for " + command.get(0), e);
    }
  }
}
