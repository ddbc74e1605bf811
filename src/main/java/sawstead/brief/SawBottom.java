package sawstead.brief;

/** Whether a saw drops its dust through its bottom. */
public enum SawBottom {
  /** Dust falls through; the stand needs an opening and a tray. */
  OPEN,
  /** Nothing falls through. */
  CLOSED;

  /** The word as a brief writes it. */
  public String word() {
    return name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
  }
}
