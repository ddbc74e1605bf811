package sawstead.export;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.Path;

/** A file or folder that could not be written, told in three parts for the person who asked. */
public final class ExportException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private final String what;
  private final String where;
  private final String remedy;

  /**
   * @param what what is wrong, a plain phrase
   * @param where the path or id it is about
   * @param remedy what the person can do
   */
  public ExportException(String what, String where, String remedy) {
    super(what + "\n  at: " + where + "\n  do: " + remedy);
    this.what = what;
    this.where = where;
    this.remedy = remedy;
  }

  static ExportException from(IOException cause, Path where) {
    ExportException exception =
        new ExportException(
            reasonOf(cause),
            where.toString(),
            "free some space or rights there, or choose another folder; what stood there before is"
                + " unchanged");
    exception.initCause(cause);
    return exception;
  }

  private static String reasonOf(IOException cause) {
    if (cause instanceof AccessDeniedException) {
      return "writing is not allowed";
    }
    String detail = cause.getMessage();
    if (cause instanceof FileSystemException system && system.getReason() != null) {
      detail = system.getReason();
    }
    return "could not write: " + (detail == null ? cause.getClass().getSimpleName() : detail);
  }

  /** What is wrong. */
  public String what() {
    return what;
  }

  /** The path or id it is about. */
  public String where() {
    return where;
  }

  /** What the person can do. */
  public String remedy() {
    return remedy;
  }
}
