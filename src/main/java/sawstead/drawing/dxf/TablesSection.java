package sawstead.drawing.dxf;

import java.util.List;

/**
 * The tables that a version wants (REF-FIL-05): all nine from R13 on, line types, layers and text
 * styles in R12.
 */
final class TablesSection {
  static final String STYLE = "STANDARD";

  private final Tags tags;
  private final Handles handles;
  private final String modelSpace;
  private final String paperSpace;

  TablesSection(Tags tags, Handles handles) {
    this.tags = tags;
    this.handles = handles;
    this.modelSpace = handles.next();
    this.paperSpace = handles.next();
  }

  /** Handle of the block record that owns what is drawn. */
  String modelSpace() {
    return modelSpace;
  }

  String paperSpace() {
    return paperSpace;
  }

  void write(List<Layer> layers, Extents extents, DxfUnit unit) {
    tags.put(0, "SECTION").put(2, "TABLES");
    if (tags.version().isLinked()) {
      viewport(extents, unit);
    }
    lineTypes();
    layers(layers);
    style();
    if (tags.version().isLinked()) {
      open("VIEW", 0);
      close();
      open("UCS", 0);
      close();
      String apps = open("APPID", 1);
      record("APPID", apps, "AcDbRegAppTableRecord").put(2, "ACAD").put(70, 0);
      close();
      dimensionStyle();
      blockRecords();
    }
    tags.put(0, "ENDSEC");
  }

  private void viewport(Extents extents, DxfUnit unit) {
    String table = open("VPORT", 1);
    double height = unit.from(extents.highV() - extents.lowV());
    double width = unit.from(extents.highU() - extents.lowU());
    record("VPORT", table, "AcDbViewportTableRecord")
        .put(2, "*ACTIVE")
        .put(70, 0)
        .putFlatPoint(10, 0, 0)
        .putFlatPoint(11, 1, 1)
        .putFlatPoint(
            12,
            unit.from((extents.lowU() + extents.highU()) / 2),
            unit.from((extents.lowV() + extents.highV()) / 2))
        .putPoint(16, 0, 0)
        .putPoint(17, 0, 0)
        // The view's height, so that the whole drawing shows in a window of four to three.
        .put(40, Math.max(height, width * 3 / 4) * 1.05)
        .put(41, 4.0 / 3);
    close();
  }

  private void lineTypes() {
    List<String> names =
        tags.version().isLinked()
            ? List.of("BYBLOCK", "BYLAYER", "CONTINUOUS")
            : List.of("CONTINUOUS");
    String table = open("LTYPE", names.size());
    for (String name : names) {
      record("LTYPE", table, "AcDbLinetypeTableRecord")
          .put(2, name)
          .put(70, 0)
          .put(3, "")
          .put(72, 65)
          .put(73, 0)
          .put(40, 0.0);
    }
    close();
  }

  private void layers(List<Layer> layers) {
    String table = open("LAYER", layers.size() + 1);
    layer(table, new Layer("0", 7, 25));
    layers.forEach(layer -> layer(table, layer));
    close();
  }

  private void layer(String table, Layer layer) {
    record("LAYER", table, "AcDbLayerTableRecord")
        .put(2, layer.name())
        .put(70, 0)
        .put(62, layer.colour())
        .put(6, "CONTINUOUS");
    if (tags.version().isLinked()) {
      tags.put(370, layer.lineWeight());
    }
  }

  private void style() {
    String table = open("STYLE", 1);
    record("STYLE", table, "AcDbTextStyleTableRecord")
        .put(2, STYLE)
        .put(70, 0)
        .put(40, 0.0)
        .put(41, 1.0)
        .put(50, 0.0)
        .put(71, 0)
        .put(42, 2.5)
        .put(3, "txt")
        .put(4, "");
    close();
  }

  private void dimensionStyle() {
    String table = open("DIMSTYLE", 1);
    tags.putClass("AcDbDimStyleTable");
    // The one record whose handle has a code of its own, 105: 5 means an arrow block here.
    tags.put(0, "DIMSTYLE").put(105, handles.next()).put(330, table);
    tags.putClass("AcDbSymbolTableRecord").putClass("AcDbDimStyleTableRecord");
    tags.put(2, STYLE).put(70, 0);
    close();
  }

  private void blockRecords() {
    String table = open("BLOCK_RECORD", 2);
    blockRecord(table, modelSpace, BlocksSection.MODEL_SPACE);
    blockRecord(table, paperSpace, BlocksSection.PAPER_SPACE);
    close();
  }

  private void blockRecord(String table, String handle, String name) {
    tags.put(0, "BLOCK_RECORD").put(5, handle).put(330, table);
    tags.putClass("AcDbSymbolTableRecord").putClass("AcDbBlockTableRecord").put(2, name);
  }

  /** Begins a table and gives its handle, empty in R12. */
  private String open(String name, int records) {
    String handle = "";
    tags.put(0, "TABLE").put(2, name);
    if (tags.version().isLinked()) {
      handle = handles.next();
      tags.put(5, handle).put(330, "0");
    }
    tags.putClass("AcDbSymbolTable").put(70, records);
    return handle;
  }

  private Tags record(String type, String table, String className) {
    tags.put(0, type);
    if (tags.version().isLinked()) {
      tags.put(5, handles.next()).put(330, table);
    }
    return tags.putClass("AcDbSymbolTableRecord").putClass(className);
  }

  private void close() {
    tags.put(0, "ENDTAB");
  }
}
