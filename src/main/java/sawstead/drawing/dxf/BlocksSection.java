package sawstead.drawing.dxf;

/** The two blocks that every linked file has: what is drawn, and an empty sheet (REF-FIL-05). */
final class BlocksSection {
  static final String MODEL_SPACE = "*MODEL_SPACE";
  static final String PAPER_SPACE = "*PAPER_SPACE";

  private final Tags tags;
  private final Handles handles;

  BlocksSection(Tags tags, Handles handles) {
    this.tags = tags;
    this.handles = handles;
  }

  void write(String modelSpace, String paperSpace) {
    tags.put(0, "SECTION").put(2, "BLOCKS");
    block(MODEL_SPACE, modelSpace, false);
    block(PAPER_SPACE, paperSpace, true);
    tags.put(0, "ENDSEC");
  }

  private void block(String name, String owner, boolean paper) {
    begin("BLOCK", owner, paper);
    tags.putClass("AcDbBlockBegin")
        .put(2, name)
        .put(70, 0)
        .putPoint(10, 0, 0)
        .put(3, name)
        .put(1, "");
    begin("ENDBLK", owner, paper);
    tags.putClass("AcDbBlockEnd");
  }

  private void begin(String type, String owner, boolean paper) {
    tags.put(0, type).put(5, handles.next()).put(330, owner).putClass("AcDbEntity");
    if (paper) {
      tags.put(67, 1);
    }
    tags.put(8, "0");
  }
}
