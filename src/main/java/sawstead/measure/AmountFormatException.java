package sawstead.measure;

/**
 * Text that is no length, angle or mass. The message is plain words for the person who wrote it.
 */
public sealed class AmountFormatException extends IllegalArgumentException
    permits LengthFormatException {

  private static final long serialVersionUID = 1L;

  private final String what;
  private final String remedy;

  /**
   * Two sentences without a full stop.
   *
   * @param what what is wrong
   * @param remedy what to write instead, with an example
   */
  public AmountFormatException(String what, String remedy) {
    super(what + "; " + remedy);
    this.what = what;
    this.remedy = remedy;
  }

  /** What is wrong. */
  public String what() {
    return what;
  }

  /** What to write instead. */
  public String remedy() {
    return remedy;
  }
}
