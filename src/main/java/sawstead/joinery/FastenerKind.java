package sawstead.joinery;

/** What holds two parts together besides glue. */
public enum FastenerKind {
  /** Countersunk wood screw. */
  WOOD_SCREW("screw"),
  /** Washer-head screw that seats in a slanted pocket. */
  POCKET_SCREW("pocket"),
  /** Thin headless nail that clamps while the glue sets. */
  BRAD("brad"),
  /** Small countersunk screw through a hinge leaf. */
  HINGE_SCREW("hinge-screw"),
  /** Screw through a caster's plate. */
  CASTER_SCREW("caster-screw"),
  /** Bolt through a bore, with washer and nut. */
  BOLT("bolt");

  private final String word;

  FastenerKind(String word) {
    this.word = word;
  }

  /** The word in ids and files. */
  public String word() {
    return word;
  }
}
