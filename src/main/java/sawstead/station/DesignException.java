package sawstead.station;

/**
 * The brief can be read, but no station follows from it. Says where in the brief the cause is and
 * what to do.
 */
public final class DesignException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private final String path;
  private final String remedy;

  /**
   * @param path where the cause stands in the brief: {@code station.legs.length}
   * @param what what is wrong, one plain sentence
   * @param remedy what to write instead
   */
  public DesignException(String path, String what, String remedy) {
    super(what);
    this.path = path;
    this.remedy = remedy;
  }

  /** Where the cause stands in the brief. */
  public String path() {
    return path;
  }

  /** What to write instead. */
  public String remedy() {
    return remedy;
  }
}
