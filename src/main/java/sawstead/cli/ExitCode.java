package sawstead.cli;

/** What the process tells its caller. */
final class ExitCode {
  /** Fine: nothing forbids cutting. */
  static final int FINE = 0;

  /** A finding forbids cutting. */
  static final int DO_NOT_CUT = 1;

  /** The brief, the arguments or the output folder cannot be used. */
  static final int BAD_INPUT = 2;

  /** A fault of the program. */
  static final int OUR_FAULT = 3;

  private ExitCode() {}
}
