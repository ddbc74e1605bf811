package sawstead.brief;

/** In which slots a sled runs. */
public enum RunnerChoice {
  /** In every slot that the saw has. */
  BOTH,
  /** In the slot left of the blade. */
  LEFT,
  /** In the slot right of the blade. */
  RIGHT;

  /** The word as a brief writes it. */
  public String word() {
    return name().toLowerCase(java.util.Locale.ROOT);
  }
}
