package sawstead.drawing.dxf;

/** The root dictionary with its one obligatory entry (REF-FIL-05). */
final class ObjectsSection {
  private final Tags tags;
  private final Handles handles;

  ObjectsSection(Tags tags, Handles handles) {
    this.tags = tags;
    this.handles = handles;
  }

  void write() {
    String root = handles.next();
    String groups = handles.next();
    tags.put(0, "SECTION").put(2, "OBJECTS");
    dictionary(root, "0");
    tags.put(3, "ACAD_GROUP").put(350, groups);
    dictionary(groups, root);
    tags.put(0, "ENDSEC");
  }

  private void dictionary(String handle, String owner) {
    tags.put(0, "DICTIONARY").put(5, handle).put(330, owner);
    tags.putClass("AcDbDictionary").put(281, 1);
  }
}
