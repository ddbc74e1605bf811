package sawstead.solid;

/** Refuses an outline that encloses no area, crosses itself, or holds a number that is none. */
public final class OutlineException extends SolidException {
  private static final long serialVersionUID = 1L;

  /**
   * A refusal in plain words.
   *
   * @param message what is wrong, and where on the outline (u, v in mm)
   */
  public OutlineException(String message) {
    super(message);
  }
}
