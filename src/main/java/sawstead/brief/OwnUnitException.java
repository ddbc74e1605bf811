package sawstead.brief;

/** A unit of the user's own that cannot be drawn. The message says where and what is wrong. */
public final class OwnUnitException extends Exception {
  private static final long serialVersionUID = 1L;

  private final String remedy;

  /**
   * @param what where in the unit's file and what is wrong: {@code units/rack.yaml:12, values.gap:
   *     ...}
   * @param remedy what to do
   */
  public OwnUnitException(String what, String remedy) {
    super(what);
    this.remedy = remedy;
  }

  /** What to do. */
  public String remedy() {
    return remedy;
  }
}
