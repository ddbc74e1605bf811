package sawstead.intake;

import java.util.List;
import java.util.stream.Collectors;

/** A brief that cannot be used, with everything that is wrong with it, in the order of the file. */
public final class BriefException extends Exception {

  private static final long serialVersionUID = 1L;

  private final String file;
  private final transient List<BriefProblem> problems;

  /**
   * An exception for one file.
   *
   * @param file the name of the file as the user gave it
   * @param problems at least one
   */
  public BriefException(String file, List<BriefProblem> problems) {
    super(words(file, problems));
    this.file = file;
    this.problems = List.copyOf(problems);
  }

  private static String words(String file, List<BriefProblem> problems) {
    if (problems.isEmpty()) {
      throw new IllegalArgumentException("a brief without problems is no exception");
    }
    return problems.stream()
        .map(problem -> problem.what() + "\n  " + problem.place(file) + "\n  " + problem.remedy())
        .collect(Collectors.joining("\n"));
  }

  /** The name of the file as the user gave it. */
  public String file() {
    return file;
  }

  /** Every problem, in the order of the file. */
  public List<BriefProblem> problems() {
    return problems;
  }
}
