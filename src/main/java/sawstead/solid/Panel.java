package sawstead.solid;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * A board cut from a sheet: an outline, a thickness and features. Local frame: u along the grain, v
 * across it, w through the thickness, 0 at the back face.
 *
 * @param outline in (u, v), mm
 * @param thickness mm
 * @param features in the order they were given; the order does not change the solid
 */
public record Panel(Outline outline, double thickness, List<Feature> features) implements Solid {
  /** Least thickness, mm: the height of about a thousand steps of the grid. */
  public static final double THINNEST = 1.0 / 1024;

  /** Refuses a thickness that is none and features that do not fit it. */
  public Panel {
    Objects.requireNonNull(outline, "outline");
    if (!(thickness >= THINNEST && thickness <= Corner.REACH)) {
      throw new SolidException(
          "the thickness of a panel must lie between 0.001 mm and 100 m, found " + thickness);
    }
    features = List.copyOf(features);
    for (Feature feature : features) {
      feature.demandFits(outline, thickness);
    }
  }

  /** A panel without features. */
  public Panel(Outline outline, double thickness) {
    this(outline, thickness, List.of());
  }

  /** Length along the grain: the outline's bounds along u, mm. */
  public double length() {
    return outline.bounds().size().x();
  }

  /** Width across the grain: the outline's bounds along v, mm. */
  public double width() {
    return outline.bounds().size().y();
  }

  /** The same panel with one feature more. */
  public Panel with(Feature feature) {
    List<Feature> more = new ArrayList<>(features);
    more.add(feature);
    return new Panel(outline, thickness, more);
  }

  @Override
  public List<String> uncut() {
    return features.stream().filter(Feature::isUncut).map(Feature::operation).distinct().toList();
  }

  @Override
  public List<Prism> prisms() {
    List<Prism> prisms = new ArrayList<>();
    prisms.add(Prism.added(outline, 0, thickness));
    for (Feature feature : features) {
      prisms.addAll(feature.removed(thickness));
    }
    return prisms;
  }

  @Override
  public List<Plane> planes() {
    return features.stream().flatMap(f -> f.planes(thickness).stream()).distinct().toList();
  }
}
