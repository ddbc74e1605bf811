package sawstead.walk;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import sawstead.intake.BriefException;
import sawstead.intake.BriefProblem;
import sawstead.intake.BriefReader;

/** What the reader of briefs says to the answers so far. */
final class FaultReader {
  private FaultReader() {}

  static List<BriefProblem> problems(Answers answers) {
    try {
      BriefReader.read("answers", BriefText.of(answers).getBytes(StandardCharsets.UTF_8));
      return List.of();
    } catch (BriefException refused) {
      return refused.problems();
    }
  }

  /**
   * The first fault of the answers, if any. A fault at a value that has only been filled in for now
   * is none: its turn comes.
   */
  static Optional<BriefProblem> fault(Answers answers) {
    return problems(answers).stream().filter(p -> !isFilledIn(answers, p.path())).findFirst();
  }

  private static boolean isFilledIn(Answers answers, String path) {
    return Route.of(answers).nodes().stream()
        .filter(n -> n.mustBeWritten() && !answers.has(n.path()))
        .anyMatch(n -> n.path().equals(path) || path.startsWith(n.path() + "["));
  }
}
