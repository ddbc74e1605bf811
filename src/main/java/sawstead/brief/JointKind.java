package sawstead.brief;

/** How the parts of a unit are joined. */
public enum JointKind {
  /** Butted or lapped, screwed through the face; glued unless removable. */
  SCREW,
  /** Butted, pocket screws. */
  POCKET,
  /** Butted, glued, brads as clamps. */
  BRAD,
  /** Let into a dado, glued. */
  DADO,
  /** Let into a rabbet at the edge, glued. */
  RABBET;

  /** The word as a brief writes it. */
  public String word() {
    return name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
  }
}
