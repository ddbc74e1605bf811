package sawstead.station.unit;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.RecordComponent;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import sawstead.brief.Brief;
import sawstead.measure.Measured;
import sawstead.solid.Box;
import sawstead.station.Area;
import sawstead.station.Draft;
import sawstead.station.Levels;
import sawstead.station.Site;

/**
 * The dimensions of a station under names that formulas can use. Lengths mm, masses kg, angles
 * degrees.
 *
 * <p>What the brief says keeps the names of its records: {@code saw.table.width}. Lists go by the
 * {@code name} or {@code id} of their entries, or as {@code n1}, {@code n2}. What is absent has no
 * name.
 */
final class StationNames {
  private StationNames() {}

  /** All groups, as they are when the next unit is drawn. */
  static Map<String, Object> of(Brief brief, Optional<Site> site, Draft draft) {
    Map<String, Object> names = new LinkedHashMap<>();
    names.put("saw", brief.saw().map(StationNames::named).orElse(Map.of()));
    names.put("vac", brief.vac().map(StationNames::named).orElse(Map.of()));
    names.put("stock", named(brief.stock()));
    names.put("solved", site.map(StationNames::solved).orElse(Map.of()));
    names.put("body", boxes(draft));
    return names;
  }

  private static Map<String, Object> solved(Site site) {
    Levels levels = site.levels();
    Map<String, Object> solved = new LinkedHashMap<>();
    solved.put("table", area(site.table(), levels.sawFeet(), levels.table()));
    solved.put("stand", area(site.stand(), levels.roll(), levels.sawFeet()));
    solved.put("bay", Map.of("bottom", levels.baseTop(), "top", levels.topUnder()));
    solved.put("leg", levels.leg());
    solved.put("workingHeight", levels.table());
    site.outfeed().ifPresent(o -> solved.put("outfeed", area(o.walls(), o.foot(), o.surface())));
    site.left().ifPresent(w -> solved.put("leftWing", area(w.area(), w.bottom(), w.surface())));
    site.right().ifPresent(w -> solved.put("rightWing", area(w.area(), w.bottom(), w.surface())));
    return solved;
  }

  private static Map<String, Object> area(Area area, double bottom, double top) {
    return box(area.between(bottom, top));
  }

  private static Map<String, Object> box(Box box) {
    Map<String, Object> sides = new LinkedHashMap<>();
    sides.put("left", box.low().x());
    sides.put("right", box.high().x());
    sides.put("front", box.low().y());
    sides.put("rear", box.high().y());
    sides.put("bottom", box.low().z());
    sides.put("top", box.high().z());
    sides.put("width", box.size().x());
    sides.put("depth", box.size().y());
    sides.put("height", box.size().z());
    return sides;
  }

  private static Map<String, Object> boxes(Draft draft) {
    Map<String, Object> boxes = new TreeMap<>();
    draft.boards().forEach(b -> boxes.put(b.id(), box(b.body().box())));
    draft.bodies().forEach(b -> boxes.put(b.id(), box(b.body().box())));
    return boxes;
  }

  private static Object named(Object value) {
    if (value instanceof Measured measured) {
      return measured.nominal();
    }
    if (value instanceof Number number) {
      return number.doubleValue();
    }
    if (value instanceof Enum<?> word) {
      return word.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
    if (value instanceof List<?> list) {
      return listed(list);
    }
    return value instanceof Record fields ? fields(fields) : value;
  }

  private static Map<String, Object> listed(List<?> list) {
    Map<String, Object> entries = new LinkedHashMap<>();
    for (int i = 0; i < list.size(); i++) {
      Object name = "n" + (i + 1);
      if (list.get(i) instanceof Record fields) {
        Map<String, Object> known = fields(fields);
        name = known.getOrDefault("name", known.getOrDefault("id", name));
      }
      entries.put(String.valueOf(name), named(list.get(i)));
    }
    return entries;
  }

  private static Map<String, Object> fields(Record record) {
    Map<String, Object> fields = new LinkedHashMap<>();
    for (RecordComponent component : record.getClass().getRecordComponents()) {
      try {
        Object value = component.getAccessor().invoke(record);
        if (value instanceof Optional<?> maybe) {
          maybe.ifPresent(v -> fields.put(component.getName(), named(v)));
        } else {
          fields.put(component.getName(), named(value));
        }
      } catch (IllegalAccessException | InvocationTargetException broken) {
        throw new IllegalStateException("a record of the brief hides " + component, broken);
      }
    }
    return fields;
  }
}
