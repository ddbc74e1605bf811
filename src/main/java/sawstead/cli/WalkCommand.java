package sawstead.cli;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import sawstead.preview.PreviewException;
import sawstead.preview.walk.WalkWindow;
import sawstead.walk.AnswerFile;
import sawstead.walk.Interview;

/** {@code walk FILE}: asks, round the saw, and writes a brief. */
@Command(
    name = "walk",
    mixinStandardHelpOptions = true,
    description = {
      "Asks you round your unplugged saw with a tape in your hand, and writes the brief.",
      "Every answer is kept at once in FILE.answers; stop when you like, and start it again to go"
          + " on."
    },
    footer = {"", "Exit codes: 0 fine, 2 it cannot be written, 3 a fault of the program."})
final class WalkCommand implements Callable<Integer> {
  private final Streams streams;
  private final InputStream in;

  @Parameters(paramLabel = "FILE", description = "The brief to be written, a YAML file.")
  private Path file;

  @Option(names = "--window", description = "Ask in a window, with drawn pictures.")
  private boolean window;

  @Option(names = "--dark", description = "Dark look of the window.")
  private boolean dark;

  WalkCommand(Streams streams, InputStream in) {
    this.streams = streams;
    this.in = in;
  }

  @Override
  public Integer call() throws Refusal {
    if (Files.exists(file)) {
      throw refused(
          "there is a brief of this name already", "name another file, or change this one in show");
    }
    AnswerFile answers = AnswerFile.beside(file);
    if (window) {
      try {
        WalkWindow.show(file, dark);
      } catch (PreviewException e) {
        throw new Refusal(List.of(new Trouble(e.getMessage(), e.where(), e.remedy())));
      }
      return ExitCode.FINE;
    }
    try {
      talk(Interview.resume(answers.read()), answers);
    } catch (IOException e) {
      throw refused(
          "the answers cannot be read or written beside it",
          "check the folder and your rights there");
    }
    return ExitCode.FINE;
  }

  private void talk(Interview interview, AnswerFile answers) throws IOException {
    PrintWriter out = streams.outText();
    BufferedReader lines = new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8));
    WalkTalk talk = new WalkTalk(out, new Paint(streams.terminal()), answers);
    Interview after = talk.ask(interview, lines);
    if (after.next().isEmpty()) {
      Files.writeString(file, after.brief(), StandardCharsets.UTF_8);
      answers.remove();
      out.println("written: " + file);
      out.println("now see what comes of it: sawstead show " + file);
    } else {
      out.println("kept: " + answers.path() + "; start walk again to go on");
    }
    out.flush();
  }

  private Refusal refused(String what, String remedy) {
    return new Refusal(List.of(new Trouble(what, file.toString(), remedy)));
  }
}
