package sawstead.measure;

/** Text that is no length. */
public final class LengthFormatException extends AmountFormatException {

  private static final long serialVersionUID = 1L;

  LengthFormatException(String what, String remedy) {
    super(what, remedy);
  }
}
