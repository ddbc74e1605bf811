package sawstead.layout;

/** What a plan puts first when as few sheets as possible at the lowest price can be cut anyhow. */
public enum Favour {
  /** A large leftover in one piece, then little labour. */
  LEFTOVER("large leftover"),
  /** Little labour: few settings and few cuts to mark, then few cuts. */
  LABOUR("little labour"),
  /** Little labour with one sheet more. */
  ONE_MORE("one sheet more");

  private final String words;

  Favour(String words) {
    this.words = words;
  }

  /** In words. */
  public String words() {
    return words;
  }
}
