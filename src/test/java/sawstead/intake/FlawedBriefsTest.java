package sawstead.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Every flawed brief gives exactly the problems that stand at its end, as {@code # problem: line |
 * path | what | remedy}: missing and surplus ones fail, and so does another order.
 */
class FlawedBriefsTest {

  private static final String MARK = "# problem: ";

  static Stream<Path> flawed() {
    return Briefs.yamlIn(Briefs.CASES.resolve("flawed"));
  }

  @ParameterizedTest
  @MethodSource("flawed")
  void read_findsExactlyTheProblems(Path file) throws Exception {
    String expected =
        Files.readAllLines(file).stream()
            .filter(line -> line.startsWith(MARK))
            .map(line -> line.substring(MARK.length()))
            .collect(Collectors.joining("\n"));
    assertFalse(expected.isEmpty(), "the file names no problem");
    assertEquals(expected, problems(file));
  }

  private static String problems(Path file) {
    try {
      BriefReader.read(file);
      return "none";
    } catch (BriefException wrong) {
      List<BriefProblem> problems = wrong.problems();
      return problems.stream()
          .map(p -> p.line() + " | " + p.path() + " | " + p.what() + " | " + p.remedy())
          .collect(Collectors.joining("\n"));
    }
  }
}
