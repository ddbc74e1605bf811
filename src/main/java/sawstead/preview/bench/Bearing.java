package sawstead.preview.bench;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BooleanSupplier;
import sawstead.intake.BriefEdit;
import sawstead.intake.BriefSpans;
import sawstead.measure.AmountFormatException;
import sawstead.measure.LengthFormat;
import sawstead.measure.LengthText;
import sawstead.measure.Unit;
import sawstead.solid.Body;
import sawstead.solid.Placement;
import sawstead.solid.Vec;
import sawstead.station.Mover;
import sawstead.station.Part;
import sawstead.station.Station;

/**
 * Which values of a brief bear on some bodies: those that are written for them, and those whose
 * change changes the bodies or how they stand to each other. Found by trying: each value is changed
 * a little and the station designed again. A value that bears on something only by a check's own
 * arithmetic (a rating, a limit) is found only where it is written for the body.
 */
public final class Bearing {
  /** How much a value is changed: this share of it, and at least so many mm. */
  private static final double SHARE = 0.03;

  private static final double LEAST = 3;

  /** Less than this has not moved, mm. */
  private static final double STILL = 1e-3;

  /** So far round a single body others are looked at, mm. */
  private static final double AROUND = 80;

  private final String file;
  private final String text;
  private final Station station;
  private final List<String> ids;
  private final Map<String, BriefSpans.Span> spans;

  private Bearing(String file, String text, Station station, List<String> about) {
    this.file = file;
    this.text = text;
    this.station = station;
    this.ids = about;
    spans = BriefSpans.of(text);
  }

  /**
   * Paths of the values that are written for the bodies: of their section, or of the list item that
   * bears their name.
   *
   * @param values paths of all values
   */
  public static List<String> written(
      String text, Station station, List<String> about, List<String> values) {
    Bearing bearing = new Bearing("", text, station, about);
    return values.stream().filter(bearing::isWrittenFor).toList();
  }

  /**
   * Paths of the lengths whose change changes the bodies or how they stand to each other. Those of
   * the saw and the sheets are tried only when no other bears on it: they are as they are.
   *
   * @param file the brief's file, in whose folder unit files are looked for
   * @param lengths paths of the lengths to try
   * @param wanted is asked between two trials whether to go on
   */
  public static List<String> tried(
      String file,
      String text,
      Station station,
      List<String> about,
      List<String> lengths,
      BooleanSupplier wanted) {
    Bearing bearing = new Bearing(file, text, station, about);
    List<String> found = new ArrayList<>();
    List<Pose> before = bearing.poses(station);
    for (boolean wishes : new boolean[] {true, false}) {
      for (String path : lengths) {
        if (isWish(path) == wishes && wanted.getAsBoolean() && bearing.bears(path, before)) {
          found.add(path);
        }
      }
      if (!found.isEmpty()) {
        return found;
      }
    }
    return found;
  }

  private boolean bears(String path, List<Pose> before) {
    return changed(path, 1)
        .or(() -> changed(path, -1))
        .filter(s -> !same(before, poses(s)))
        .isPresent();
  }

  /** What one may change: everything but the saw and the sheets, which are as they are. */
  private static boolean isWish(String path) {
    return !path.startsWith("saw.") && !path.startsWith("stock[");
  }

  private boolean isWrittenFor(String path) {
    for (String id : ids) {
      String dotted = id.replace('/', '.');
      if (path.startsWith(dotted + ".") || path.startsWith(dotted + "[")) {
        return true;
      }
      int open = path.indexOf('[');
      int close = path.indexOf(']');
      if (open > 0 && close > 0) {
        String item = path.substring(0, close + 1);
        String name = id.substring(id.lastIndexOf('/') + 1);
        String known = named(item, id).orElse("");
        if (known.equals(id) || known.equals(name)) {
          return true;
        }
      }
    }
    return false;
  }

  private Optional<String> named(String item, String id) {
    return Optional.ofNullable(spans.get(item + ".id"))
        .or(() -> Optional.ofNullable(spans.get(item + ".name")))
        .flatMap(BriefSpans.Span::value);
  }

  /** The station with one length changed; empty if there is none then. */
  private Optional<Station> changed(String path, int sign) {
    Unit unit =
        Optional.ofNullable(spans.get("units"))
            .flatMap(BriefSpans.Span::value)
            .flatMap(Unit::of)
            .orElse(Unit.MM);
    Optional<String> written = Optional.ofNullable(spans.get(path)).flatMap(BriefSpans.Span::value);
    try {
      if (written.isEmpty()) {
        return Optional.empty();
      }
      double was = LengthText.parse(written.get(), unit).nominal();
      double by = sign * Math.max(LEAST, SHARE * Math.abs(was));
      String value = LengthFormat.millimetres().withUnit(was + by);
      return BriefEdit.set(text, path, value)
          .flatMap(edit -> Bench.design(file, edit.in(text)).station());
    } catch (AmountFormatException notALength) {
      return Optional.empty();
    }
  }

  /** A body, and where it stands as seen from the first one. */
  private record Pose(Body body, List<Vec> corners) {}

  private List<Pose> poses(Station of) {
    Set<String> bodies = new LinkedHashSet<>();
    ids.forEach(id -> bodies.addAll(Named.of(id, of)));
    if (bodies.size() == 1) {
      bodies.addAll(near(of.part(bodies.iterator().next()), of));
    }
    List<Pose> poses = new ArrayList<>();
    Placement first = null;
    for (String id : bodies) {
      if (of.part(id).isEmpty()) {
        continue;
      }
      Body body = of.part(id).get().body();
      first = first == null ? body.placement().inverse() : first;
      Placement seen = first.after(body.placement());
      poses.add(
          new Pose(
              body,
              List.of(
                  seen.origin(), seen.apply(new Vec(100, 0, 0)), seen.apply(new Vec(0, 100, 0)))));
    }
    for (Mover mover : of.movers()) {
      if (ids.contains(mover.id()) && first != null) {
        Placement far =
            first.after(mover.motion().at(mover.motion().to()).after(mover.setting().set()));
        poses.add(
            new Pose(null, List.of(far.apply(new Vec(0, 0, 0)), far.apply(new Vec(0, 900, 900)))));
      }
    }
    return poses;
  }

  /** What stands round a single body: it is wrong by those, whether it touches them or not. */
  private static List<String> near(Optional<Part> part, Station of) {
    return part.map(
            p ->
                of.parts().values().stream()
                    .filter(o -> o.body().box().overlaps(p.body().box(), AROUND))
                    .map(Part::id)
                    .toList())
        .orElse(List.of());
  }

  private static boolean same(List<Pose> before, List<Pose> now) {
    if (before.size() != now.size()) {
      return false;
    }
    for (int k = 0; k < before.size(); k++) {
      Pose a = before.get(k);
      Pose b = now.get(k);
      boolean shape =
          a.body() == null
              ? b.body() == null
              : b.body() != null && a.body().solid().equals(b.body().solid());
      for (int c = 0; shape && c < a.corners().size(); c++) {
        shape = a.corners().get(c).distance(b.corners().get(c)) < STILL;
      }
      if (!shape) {
        return false;
      }
    }
    return true;
  }
}
