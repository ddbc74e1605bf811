package sawstead.brief;

/** Which face of the panels cut from a sheet is the good one. */
public enum GoodSide {
  FRONT,
  BACK,
  /** Either: splinters on one of them are no matter, or both are alike. */
  BOTH;

  /** As the brief writes it. */
  public String word() {
    return name().toLowerCase(java.util.Locale.ROOT);
  }

  /**
   * How the work lies under a guided saw, whose teeth come out at the top: good side down; empty
   * when it does not matter. Common practice, no source.
   */
  public String atGuidedSaw() {
    return this == BOTH ? "" : word() + " down";
  }

  /**
   * How the work lies at the table saw, whose teeth come out at the bottom: good side up; empty
   * when it does not matter. Common practice, no source.
   */
  public String atTableSaw() {
    return this == BOTH ? "" : word() + " up";
  }
}
