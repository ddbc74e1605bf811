package sawstead.station;

/** What a body of the station is. */
public enum PartKind {
  /** A panel that will be cut. */
  PANEL,
  /** The space that something takes up: the saw, the vac, what is kept in a cubby. */
  ENVELOPE,
  /** Something bought and fixed on: a hinge's leaf, a caster's plate. */
  HARDWARE;

  /** The word of the report. */
  public String word() {
    return name().toLowerCase(java.util.Locale.ROOT);
  }
}
