package sawstead.layout.sheet;

import java.io.IOException;
import java.io.OutputStream;
import java.util.ArrayList;
import java.util.List;
import sawstead.drawing.dxf.Drawn;
import sawstead.drawing.dxf.DxfDrawing;
import sawstead.drawing.dxf.DxfFile;
import sawstead.drawing.dxf.DxfUnit;
import sawstead.drawing.dxf.DxfVersion;
import sawstead.drawing.dxf.Layer;
import sawstead.solid.Outline;

/**
 * A sheet as DXF, one layer for each pass: {@code kerf-seller}, {@code kerf-rail}, {@code
 * kerf-packed-rail}, {@code kerf-fence-88mm9}, {@code kerf-sled-300mm} hold the dust of every cut
 * as closed rectangles (the unit stands where the decimal point would); {@code sheet}, {@code
 * part}, {@code offcut}, {@code defect} the rest; {@code label} the names, {@code order} the
 * numbers of the cuts.
 */
final class SheetDxfWriter {
  private static final int BOLD = 50;
  private static final int FINE = 18;
  // Palette indices: 1 red, 3 green, 5 blue, 7 white or black, 8 and 9 greys, 30 orange.
  private static final Layer SHEET = new Layer("sheet", 7, BOLD);
  private static final Layer PART = new Layer("part", 7, 25);
  private static final Layer OFFCUT = new Layer("offcut", 3, FINE);
  private static final Layer DEFECT = new Layer("defect", 1, FINE);
  private static final Layer LABEL = new Layer("label", 9, FINE);
  private static final Layer ORDER = new Layer("order", 8, FINE);

  private final DxfUnit unit;

  SheetDxfWriter(DxfUnit unit) {
    this.unit = unit;
  }

  void write(SheetScene scene, OutputStream out) throws IOException {
    List<Drawn> things = new ArrayList<>();
    things.add(Drawn.of(SHEET, Outline.rectangle(0, 0, scene.length(), scene.width())));
    scene.rests().forEach(rest -> things.add(rectangle(OFFCUT, rest)));
    for (Shape.Panel panel : scene.panels()) {
      things.add(rectangle(PART, panel));
      double height = Math.min(20, Math.max(4, Math.min(panel.length(), panel.width()) / 6));
      things.add(
          new Drawn.Words(LABEL, panel.name(), panel.x() + height, panel.y() + height, height));
    }
    scene.flaws().forEach(flaw -> things.add(rectangle(DEFECT, flaw)));
    for (Shape.Kerf kerf : scene.kerfs()) {
      things.add(rectangle(layer(kerf), kerf));
      double lift = kerf.alongLength() ? kerf.width() : 0;
      things.add(
          new Drawn.Words(
              ORDER, Integer.toString(kerf.order()), kerf.x() + 8, kerf.y() + 8 + lift, 10));
    }
    DxfFile.write(new DxfDrawing(things), DxfVersion.R2000, unit, out);
  }

  private static Drawn rectangle(Layer layer, Shape shape) {
    return Drawn.of(
        layer,
        Outline.rectangle(
            shape.x(), shape.y(), shape.x() + shape.length(), shape.y() + shape.width()));
  }

  private Layer layer(Shape.Kerf kerf) {
    return switch (kerf.guide()) {
      case SELLER -> new Layer("kerf-seller", 3, FINE);
      case RAIL -> new Layer("kerf-rail", 8, FINE);
      case PACKED_RAIL -> new Layer("kerf-packed-rail", 8, FINE);
      case FENCE -> new Layer("kerf-fence-" + unit.inName(kerf.setting()), 5, FINE);
      case SLED -> new Layer("kerf-sled-" + unit.inName(kerf.setting()), 30, FINE);
    };
  }
}
