package sawstead.preview;

import java.util.Objects;

/** Something cannot be shown: what, where, and what to do instead. */
public final class PreviewException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private final String where;
  private final String remedy;

  /**
   * @param what what is wrong, one plain sentence
   * @param where on this machine, or which file
   * @param remedy what to do
   */
  public PreviewException(String what, String where, String remedy) {
    super(what);
    this.where = Objects.requireNonNull(where, "where");
    this.remedy = Objects.requireNonNull(remedy, "remedy");
  }

  /** On this machine, or which file. */
  public String where() {
    return where;
  }

  /** What to do. */
  public String remedy() {
    return remedy;
  }
}
