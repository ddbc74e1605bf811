package sawstead.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sawstead.outside.OutsideTool;

/** Also judges {@code show} where there is no display. */
class PictureCommandTest {
  private static final Path DEMO = OutsideTool.project().resolve("models/first-brief.yaml");

  @TempDir private Path folder;

  @ParameterizedTest
  @CsvSource({
    "--view, under, there is no view under",
    "--size, big, is no size",
    "--size, 9x9, 64 to 4096 pixels",
    "--spread, 2, cannot be spread",
    "--times, 9, 9.0 times as large",
    "--times, NaN, times as large",
    "--times, 1.5, use --size",
    "--of, sky, there is no picture of sky"
  })
  void badWish_isRefusedWithWhatToDo(String option, String value, String says) {
    ByteArrayOutputStream err = new ByteArrayOutputStream();
    PrintStream stream = new PrintStream(err, true, StandardCharsets.UTF_8);
    Streams streams = new Streams(stream, stream, StandardCharsets.UTF_8, false);
    Path out = folder.resolve("x.png");
    int code =
        Main.run(streams, "picture", DEMO.toString(), "--out", out.toString(), option, value);
    assertEquals(ExitCode.BAD_INPUT, code);
    String told = err.toString(StandardCharsets.UTF_8);
    assertTrue(told.contains(says), told);
    assertFalse(Files.exists(out));
  }

  @ParameterizedTest
  @CsvSource({"picture", "show"})
  void withoutADisplay_aPlainSentence(String command) throws Exception {
    Ended ended = withoutDisplay(command, DEMO.toString());
    assertEquals(ExitCode.BAD_INPUT, ended.code(), ended.told());
    assertTrue(ended.told().contains("there is no display to draw on"), ended.told());
    assertFalse(ended.told().contains("\tat "), ended.told());
    assertEquals(3, ended.told().strip().lines().count(), ended.told());
  }

  @Test
  void show_ofNoFile_isRefused() throws Exception {
    Ended ended = withoutDisplay("show", folder.resolve("none.yaml").toString());
    assertEquals(ExitCode.BAD_INPUT, ended.code());
    assertTrue(ended.told().contains("there is no such file"), ended.told());
  }

  private record Ended(int code, String told) {}

  private Ended withoutDisplay(String... arguments) throws IOException, InterruptedException {
    Path told = folder.resolve("told.txt");
    List<String> command =
        new java.util.ArrayList<>(
            List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-cp",
                System.getProperty("java.class.path"),
                "sawstead.cli.Main"));
    command.addAll(List.of(arguments));
    ProcessBuilder builder =
        new ProcessBuilder(command)
            .directory(folder.toFile())
            .redirectErrorStream(true)
            .redirectOutput(told.toFile());
    builder.environment().remove("DISPLAY");
    builder.environment().remove("WAYLAND_DISPLAY");
    Process process = builder.start();
    assertTrue(process.waitFor(120, TimeUnit.SECONDS));
    return new Ended(process.exitValue(), Files.readString(told));
  }
}
