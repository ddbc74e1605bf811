package sawstead.formula;

/** A formula that cannot be read or has no value. The message says what is wrong. */
public final class FormulaException extends Exception {
  private static final long serialVersionUID = 1L;

  private final String remedy;

  /**
   * @param what what is wrong, one plain sentence
   * @param remedy what to write instead
   */
  FormulaException(String what, String remedy) {
    super(what);
    this.remedy = remedy;
  }

  /** What to write instead. */
  public String remedy() {
    return remedy;
  }
}
