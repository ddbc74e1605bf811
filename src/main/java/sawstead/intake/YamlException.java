package sawstead.intake;

/** YAML that cannot become a tree: nothing more can be read from such a file. */
final class YamlException extends Exception {

  private static final long serialVersionUID = 1L;

  private final transient BriefProblem problem;

  YamlException(int line, String what, String remedy) {
    super(what);
    this.problem = new BriefProblem(line, "", what, remedy);
  }

  BriefProblem problem() {
    return problem;
  }
}
