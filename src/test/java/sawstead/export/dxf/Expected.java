package sawstead.export.dxf;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import sawstead.drawing.dxf.DxfUnit;
import sawstead.drawing.dxf.DxfVersion;
import sawstead.solid.Bevel;
import sawstead.solid.Bore;
import sawstead.solid.EdgeBore;
import sawstead.solid.Face;
import sawstead.solid.Feature;
import sawstead.solid.Mark;
import sawstead.solid.Opening;
import sawstead.solid.Outline;
import sawstead.solid.Panel;
import sawstead.solid.PocketBore;
import sawstead.solid.Recess;

/** What a reader must find, worked out from the panel alone and not by the writer's classes. */
final class Expected {
  private final boolean capitals;
  private final double scale;
  private final String unit;
  private final int decimals;
  private final Map<String, List<Double>> areas = new TreeMap<>();
  private final Map<String, List<Double>> radii = new TreeMap<>();
  private final Set<String> layers = new TreeSet<>();

  private Expected(DxfVersion version, DxfUnit unit) {
    this.capitals = version == DxfVersion.R12;
    this.scale = unit == DxfUnit.INCH ? 1 / 25.4 : 1;
    this.unit = unit == DxfUnit.INCH ? "in" : "mm";
    this.decimals = unit == DxfUnit.INCH ? 4 : 3;
  }

  static Expected of(Panel panel, DxfVersion version, DxfUnit unit) {
    Expected expected = new Expected(version, unit);
    expected.layers.add("0");
    expected.layers.add(expected.spelt("label"));
    expected.outline("outline", panel.outline());
    panel.features().forEach(expected::add);
    return expected;
  }

  Set<String> layers() {
    return layers;
  }

  List<Double> areas(String layer) {
    return areas.getOrDefault(layer, List.of());
  }

  List<Double> radii(String layer) {
    return radii.getOrDefault(layer, List.of());
  }

  private void add(Feature feature) {
    if (feature instanceof Opening opening) {
      outline("opening", opening.outline());
    } else if (feature instanceof Recess recess) {
      outline(named(recess.operation(), recess.depth(), recess.face()), recess.outline());
    } else if (feature instanceof Bore bore) {
      String layer = bore.through() ? "bore-through" : named("bore", bore.depth(), bore.face());
      put(radii, layer, bore.diameter() / 2 * scale);
    } else if (feature instanceof Bevel bevel) {
      layers.add(spelt(named("bevel", bevel.downEdge(), bevel.face())));
    } else if (feature instanceof EdgeBore bore) {
      put(areas, "edge-bore", bore.depth() * bore.diameter() * scale * scale);
    } else if (feature instanceof PocketBore bore) {
      double reach = Math.hypot(bore.direction().x(), bore.direction().y()) * bore.depth();
      Face face = bore.direction().z() < 0 ? Face.FRONT : Face.BACK;
      put(areas, named("pocket", bore.depth(), face), reach * bore.diameter() * scale * scale);
    } else if (feature instanceof Mark) {
      layers.add(spelt("mark"));
    }
  }

  private void outline(String layer, Outline outline) {
    if (outline.isCircle()) {
      put(radii, layer, Math.sqrt(outline.area() / Math.PI) * scale);
    } else {
      put(areas, layer, outline.area() * scale * scale);
    }
  }

  private void put(Map<String, List<Double>> map, String layer, double value) {
    layers.add(spelt(layer));
    map.computeIfAbsent(spelt(layer), l -> new ArrayList<>()).add(value);
  }

  private String named(String operation, double depth, Face face) {
    String figure =
        BigDecimal.valueOf(depth * scale)
            .setScale(decimals, RoundingMode.HALF_EVEN)
            .stripTrailingZeros()
            .toPlainString();
    String side = face.name().toLowerCase(Locale.ROOT);
    String spelt = figure.contains(".") ? figure.replace(".", unit) : figure + unit;
    return operation + "-" + spelt + "-" + side;
  }

  private String spelt(String layer) {
    return capitals ? layer.toUpperCase(Locale.ROOT) : layer;
  }
}
