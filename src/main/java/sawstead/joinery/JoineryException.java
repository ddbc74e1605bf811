package sawstead.joinery;

/**
 * Refuses a board, a cut or a joint that cannot be made. The message is one plain sentence with the
 * boards and figures in question.
 */
public final class JoineryException extends IllegalArgumentException {
  private static final long serialVersionUID = 1L;

  /**
   * A refusal in plain words.
   *
   * @param message what is wrong, with the figures found
   */
  public JoineryException(String message) {
    super(message);
  }
}
