package sawstead.export.dxf;

import java.util.ArrayList;
import java.util.List;
import sawstead.drawing.dxf.Drawn;
import sawstead.drawing.dxf.DxfDrawing;
import sawstead.drawing.dxf.DxfUnit;
import sawstead.drawing.dxf.DxfVersion;
import sawstead.drawing.dxf.Extents;
import sawstead.drawing.dxf.Layer;
import sawstead.solid.Feature;
import sawstead.solid.Mark;
import sawstead.solid.Panel;

/**
 * A panel as things on layers: its outline, its features, and below all of them (at smaller v) a
 * label and an arrow along the grain.
 */
final class PanelDrawing {
  // Text a tenth of the panel's lesser side tall, but readable on a screen and on a print.
  private static final double LEAST_HEIGHT = 5;
  private static final double GREATEST_HEIGHT = 20;
  private static final double LINE_PITCH = 1.6;

  private PanelDrawing() {}

  static DxfDrawing of(String id, Panel panel, DxfVersion version, DxfUnit unit) {
    LayerNames layers = new LayerNames(version, unit);
    FeatureDrawing features = new FeatureDrawing(layers);
    List<Drawn> things = new ArrayList<>();
    things.add(Drawn.of(layers.outline(), panel.outline()));
    for (Feature feature : panel.features()) {
      things.addAll(features.of(feature));
    }
    label(things, layers.of("label"), panel, lines(id, panel, unit));
    return new DxfDrawing(things);
  }

  private static List<String> lines(String id, Panel panel, DxfUnit unit) {
    List<String> lines = new ArrayList<>();
    lines.add(id);
    lines.add(
        "%s x %s x %s %s"
            .formatted(
                unit.figure(panel.length()),
                unit.figure(panel.width()),
                unit.figure(panel.thickness()),
                unit.symbol()));
    for (Feature feature : panel.features()) {
      // Words that belong to no line or point have no place of their own on the panel.
      if (feature instanceof Mark mark && mark.strokes().isEmpty() && !mark.text().isBlank()) {
        lines.add(mark.text());
      }
    }
    return lines;
  }

  private static void label(List<Drawn> things, Layer layer, Panel panel, List<String> lines) {
    Extents all = new DxfDrawing(things).extents();
    double lesser = Math.min(panel.length(), panel.width());
    double height = Math.max(LEAST_HEIGHT, Math.min(GREATEST_HEIGHT, lesser / 10));
    double v = all.lowV() - height;
    for (String line : lines) {
      v -= height * LINE_PITCH;
      things.add(new Drawn.Words(layer, line, all.lowU(), v, height));
    }
    v -= height * LINE_PITCH;
    double to = all.lowU() + 8 * height;
    things.add(new Drawn.Line(layer, all.lowU(), v, to, v));
    things.add(new Drawn.Line(layer, to, v, to - height, v + height / 3));
    things.add(new Drawn.Line(layer, to, v, to - height, v - height / 3));
  }
}
