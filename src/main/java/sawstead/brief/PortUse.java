package sawstead.brief;

/** What passes through a port. */
public enum PortUse {
  /** The vac's hose with its cuff. */
  HOSE,
  /** The saw's plug. */
  PLUG,
  /** Whatever the given diameter lets pass. */
  FREE;

  /** The word as a brief writes it. */
  public String word() {
    return name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
  }
}
