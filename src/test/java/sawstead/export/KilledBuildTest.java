package sawstead.export;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** {@link OutputFolder} in a process of its own that the system ends or refuses space. */
class KilledBuildTest {
  @TempDir Path place;

  @Test
  void write_inAProcessThatIsKilled_leavesTheOldFolderAndTheNextRunClearsUp() throws Exception {
    Path target = place.resolve("demo");
    OutputFolder.at(target).write(draft -> put(draft, "old"));
    assertEquals(9, run("", "die").code());
    assertEquals("old", Files.readString(target.resolve("report.json")));
    assertTrue(Files.exists(place.resolve(".demo.sawstead-draft/report.json")));

    OutputFolder.at(target).write(draft -> put(draft, "new"));
    assertEquals("new", Files.readString(target.resolve("report.json")));
    try (Stream<Path> left = Files.list(place)) {
      assertEquals(List.of(target), left.toList());
    }
  }

  @Test
  void write_withoutSpace_saysSoAndLeavesNothing() throws Exception {
    assumeTrue(Files.isExecutable(Path.of("/bin/bash")), "bash sets the limit");
    Ended ended = run("ulimit -f 64; ", "fill");
    assertEquals(2, ended.code(), ended.output());
    assertTrue(ended.output().contains("could not write"), ended.output());
    assertTrue(ended.output().contains(place.resolve("demo").toString()), ended.output());
    try (Stream<Path> left = Files.list(place)) {
      assertEquals(List.of(), left.toList());
    }
  }

  private record Ended(int code, String output) {}

  private Ended run(String before, String task) throws IOException, InterruptedException {
    String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
    Process process =
        new ProcessBuilder(
                "/bin/bash",
                "-c",
                before + "exec \"$@\"",
                "bash",
                java,
                "-XX:-UsePerfData",
                "-cp",
                System.getProperty("java.class.path"),
                Victim.class.getName(),
                place.resolve("demo").toString(),
                task)
            .redirectErrorStream(true)
            .start();
    String output = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    return new Ended(process.waitFor(), output);
  }

  private static void put(Draft draft, String text) throws IOException {
    try (OutputStream out = draft.open(FileName.parse("report.json"))) {
      out.write(text.getBytes(StandardCharsets.UTF_8));
    }
  }

  /** The program that runs in the process of its own. */
  static final class Victim {
    private Victim() {}

    public static void main(String[] arguments) {
      boolean fill = arguments[1].equals("fill");
      try {
        OutputFolder.at(Path.of(arguments[0]))
            .write(
                draft -> {
                  put(draft, fill ? "x".repeat(1 << 20) : "half");
                  Runtime.getRuntime().halt(9);
                });
      } catch (ExportException e) {
        System.err.println(e.getMessage());
        System.exit(2);
      }
    }
  }
}
