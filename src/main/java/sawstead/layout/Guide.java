package sawstead.layout;

/** What leads the work or the saw through a cut. */
public enum Guide {
  /** The seller's saw, before the sheet goes home; the cut is measured, and rough. */
  SELLER(Tool.SELLER),
  /** The rail of the guided saw; the cut is measured and marked. */
  RAIL(Tool.GUIDED),
  /**
   * The rail, too narrowly supported by the work alone, so that a strip as thick lies beside it.
   */
  PACKED_RAIL(Tool.GUIDED),
  /** The fence of the table saw; the setting is the distance from fence to blade. */
  FENCE(Tool.TABLE),
  /** A sled with a stop, or a stand-off block; the setting is the distance from stop to blade. */
  SLED(Tool.TABLE);

  private final Tool tool;

  Guide(Tool tool) {
    this.tool = tool;
  }

  /** The saw it belongs to. */
  public Tool tool() {
    return tool;
  }
}
