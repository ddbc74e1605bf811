package sawstead.drawing.dxf;

import java.util.List;
import sawstead.solid.Corner;

/** The things drawn, each with its group codes (REF-FIL-06, REF-FIL-07). Lengths come in mm. */
public final class EntitiesSection {
  private final Tags tags;
  private final Handles handles;
  private final DxfUnit unit;
  private final String owner;

  /**
   * An empty section.
   *
   * @param owner handle of the model space's block record
   */
  EntitiesSection(Tags tags, Handles handles, DxfUnit unit, String owner) {
    this.tags = tags;
    this.handles = handles;
    this.unit = unit;
    this.owner = owner;
  }

  void write(DxfDrawing drawing) {
    tags.put(0, "SECTION").put(2, "ENTITIES");
    drawing.things().forEach(thing -> thing.writeTo(this));
    tags.put(0, "ENDSEC");
  }

  /** A closed polyline; the bulge of a corner is that of the edge that leaves it. */
  void polyline(Layer layer, List<Corner> corners) {
    if (!tags.version().isLinked()) {
      heavyPolyline(layer, corners);
      return;
    }
    begin("LWPOLYLINE", layer);
    tags.putClass("AcDbPolyline").put(90, corners.size()).put(70, 1);
    for (Corner corner : corners) {
      tags.putFlatPoint(10, unit.from(corner.u()), unit.from(corner.v()));
      tags.put(42, corner.bulge());
    }
  }

  private void heavyPolyline(Layer layer, List<Corner> corners) {
    begin("POLYLINE", layer);
    tags.put(66, 1).putPoint(10, 0, 0).put(70, 1);
    for (Corner corner : corners) {
      begin("VERTEX", layer);
      tags.putPoint(10, unit.from(corner.u()), unit.from(corner.v())).put(42, corner.bulge());
    }
    begin("SEQEND", layer);
  }

  void circle(Layer layer, double u, double v, double radius) {
    begin("CIRCLE", layer);
    tags.putClass("AcDbCircle").putPoint(10, unit.from(u), unit.from(v)).put(40, unit.from(radius));
  }

  void line(Layer layer, double fromU, double fromV, double toU, double toV) {
    begin("LINE", layer);
    tags.putClass("AcDbLine")
        .putPoint(10, unit.from(fromU), unit.from(fromV))
        .putPoint(11, unit.from(toU), unit.from(toV));
  }

  void point(Layer layer, double u, double v) {
    begin("POINT", layer);
    tags.putClass("AcDbPoint").putPoint(10, unit.from(u), unit.from(v));
  }

  void text(Layer layer, String words, double u, double v, double height) {
    begin("TEXT", layer);
    tags.putClass("AcDbText")
        .putPoint(10, unit.from(u), unit.from(v))
        .put(40, unit.from(height))
        .put(1, DxfText.of(words, tags.version()))
        .put(7, TablesSection.STYLE)
        // The format wants the marker twice: the second opens the vertical alignment.
        .putClass("AcDbText");
  }

  private void begin(String type, Layer layer) {
    tags.put(0, type);
    if (tags.version().isLinked()) {
      tags.put(5, handles.next()).put(330, owner);
    }
    tags.putClass("AcDbEntity").put(8, layer.name());
  }
}
