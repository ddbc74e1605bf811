package sawstead.solid;

/**
 * Refuses a solid, a feature or a number that cannot exist. The message is one plain sentence for
 * the woodworker: what is wrong, and with which figures.
 */
public sealed class SolidException extends IllegalArgumentException permits OutlineException {
  private static final long serialVersionUID = 1L;

  /**
   * A refusal in plain words.
   *
   * @param message what is wrong, with the figures found
   */
  public SolidException(String message) {
    super(message);
  }
}
