package sawstead.check;

import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import sawstead.brief.Brief;
import sawstead.measure.Measured;
import sawstead.measure.Measured.Origin;
import sawstead.station.Figure;

/**
 * What was not measured, and what that costs: {@code certainty} (note), at most one a section of
 * the brief, for values that stand in for a measurement and widen the band of a figure, and for
 * every value that the user called unknown.
 *
 * <p>Exact: a figure names the measurements that widen its band.
 */
final class CertaintyCheck implements Check {
  @Override
  public Outcome judge(Scene scene) {
    Map<String, List<Measured>> sections = new TreeMap<>();
    for (Measured measured : measurements(scene.brief())) {
      boolean costs = !widened(scene, measured).isEmpty();
      boolean guessed = measured.origin() == Origin.DEFAULT && costs;
      if (guessed || measured.origin() == Origin.UNKNOWN) {
        sections.computeIfAbsent(section(measured), s -> new ArrayList<>()).add(measured);
      }
    }
    List<Finding> findings = new ArrayList<>();
    sections.forEach((section, missing) -> findings.add(finding(scene, section, missing)));
    return Outcome.of(findings);
  }

  private static Finding finding(Scene scene, String section, List<Measured> missing) {
    List<String> paths = missing.stream().map(Measured::path).sorted().toList();
    List<String> figures =
        scene.station().figures().values().stream()
            .filter(f -> missing.stream().anyMatch(m -> f.rests().contains(m.path())))
            .map(f -> f.name() + " (" + band(scene, f) + ")")
            .toList();
    String says =
        Words.count(paths.size(), "value", "values")
            + " of `"
            + section
            + "` "
            + (paths.size() == 1 ? "is a typical one" : "are typical ones")
            + ", not measured: "
            + Words.some(paths);
    String cost =
        figures.isEmpty()
            ? "; no figure rests on " + (paths.size() == 1 ? "it" : "them")
            : "; less certain for it: " + Words.some(figures);
    return Finding.general(
        Severity.NOTE,
        "certainty",
        paths,
        says + cost,
        figures.isEmpty()
            ? "measure when it is convenient"
            : "measure " + worst(scene, missing) + " first, and write it in the brief");
  }

  /** The missing value that stands first in the rests of the most figures. */
  private static String worst(Scene scene, List<Measured> missing) {
    return missing.stream()
        .max(
            Comparator.comparingInt((Measured m) -> widened(scene, m).size())
                .thenComparingDouble(m -> m.plus() + m.minus()))
        .orElseThrow()
        .path();
  }

  private static List<Figure> widened(Scene scene, Measured measured) {
    return scene.station().figures().values().stream()
        .filter(f -> f.rests().contains(measured.path()))
        .toList();
  }

  private static String band(Scene scene, Figure figure) {
    return scene.words().length(figure.low()) + " to " + scene.words().length(figure.high());
  }

  private static String section(Measured measured) {
    return measured.path().split("[.\\[]", 2)[0];
  }

  /** Every measurement in a brief, found by the shape of its records. */
  private static List<Measured> measurements(Brief brief) {
    List<Measured> found = new ArrayList<>();
    collect(brief, found);
    return found.stream().distinct().toList();
  }

  private static void collect(Object value, List<Measured> found) {
    if (value instanceof Measured measured) {
      found.add(measured);
    } else if (value instanceof Optional<?> maybe) {
      maybe.ifPresent(v -> collect(v, found));
    } else if (value instanceof Iterable<?> many) {
      many.forEach(v -> collect(v, found));
    } else if (value instanceof Record record) {
      for (RecordComponent component : record.getClass().getRecordComponents()) {
        collect(read(record, component), found);
      }
    }
  }

  private static Object read(Record record, RecordComponent component) {
    try {
      return component.getAccessor().invoke(record);
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException("a record of the brief cannot be read: " + component, e);
    }
  }
}
