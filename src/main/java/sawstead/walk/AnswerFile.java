package sawstead.walk;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;

/**
 * Keeps the answers of an interview beside the brief that will come of it, one in a line: path,
 * what was said, what is written for it, parted by tabs. Each answer is on disk before the next
 * question is asked.
 *
 * @param path of the file
 */
public record AnswerFile(Path path) {
  private static final String HEAD = "# answers so far; `sawstead walk` goes on from here";

  /** The file beside a brief. */
  public static AnswerFile beside(Path brief) {
    return new AnswerFile(brief.resolveSibling(brief.getFileName() + ".answers"));
  }

  /** The answers in it; none if there is no such file. Lines that say nothing are passed over. */
  public List<Answer> read() throws IOException {
    List<Answer> answers = new ArrayList<>();
    if (Files.exists(path)) {
      for (String line : Files.readAllLines(path, StandardCharsets.UTF_8)) {
        String[] parts = line.split("\t", -1);
        if (!line.startsWith("#") && parts.length == 3 && !parts[1].isBlank()) {
          answers.add(new Answer(parts[0], parts[1], parts[2]));
        }
      }
    }
    return answers;
  }

  /** Writes the answers, all of them or none. */
  public void write(List<Answer> answers) throws IOException {
    List<String> lines = new ArrayList<>(List.of(HEAD));
    answers.forEach(a -> lines.add(String.join("\t", a.path(), a.said(), a.written())));
    Path folder = path.toAbsolutePath().getParent();
    Path draft = Files.createTempFile(folder, ".answers", ".tmp");
    try {
      Files.write(draft, lines, StandardCharsets.UTF_8);
      Files.move(draft, path, StandardCopyOption.REPLACE_EXISTING);
    } finally {
      Files.deleteIfExists(draft);
    }
  }

  /** Takes the file away, once its answers stand in a brief. */
  public void remove() throws IOException {
    Files.deleteIfExists(path);
  }
}
