package sawstead.check;

import java.util.List;
import java.util.Optional;
import sawstead.assembly.Assembly;
import sawstead.assembly.BuildPlan;
import sawstead.brief.Brief;
import sawstead.brief.StationWish;
import sawstead.solid.Body;
import sawstead.station.Part;
import sawstead.station.PartKind;
import sawstead.station.Station;

/**
 * A station on the bench of the inspector, with what several checks look at. Each is found when a
 * check first asks for it, so that a single check can be asked without the labour of all. For one
 * thread.
 */
final class Scene {
  /** Contact tolerance where the brief names no station, mm. */
  private static final double USUAL_CONTACT = 0.05;

  private final Station station;
  private final double contact;
  private final Words words;
  private final List<Part> parts;
  private final Optional<String> onlyMotion;
  private List<Clash> clashes;
  private List<Passage> passages;
  private List<Gap> gaps;
  private BuildPlan plan;
  private Station whole;

  Scene(Station designed) {
    this(designed, Optional.empty());
  }

  private Scene(Station designed, Optional<String> motion) {
    onlyMotion = motion;
    contact =
        designed
            .brief()
            .station()
            .map(StationWish::contact)
            .map(m -> m.nominal())
            .orElse(USUAL_CONTACT);
    station = designed;
    words = new Words(station.brief().units());
    parts = List.copyOf(station.parts().values());
  }

  /** Where no other motion than this is made; nothing can come out of the station then. */
  static Scene ofOneMotion(Station designed, String id) {
    return new Scene(designed, Optional.of(id));
  }

  /** As it was designed. */
  Station station() {
    return station;
  }

  /** With the ways out of what is kept in it, which the order of building finds, as motions. */
  Station whole() {
    if (whole == null) {
      whole = station.with(ExitMotions.of(station, plan().exits()));
    }
    return whole;
  }

  Brief brief() {
    return station.brief();
  }

  /** Depth up to which touching is no clash, mm. */
  double contact() {
    return contact;
  }

  /** Amounts in the user's units. */
  Words words() {
    return words;
  }

  /** All parts, by id. */
  List<Part> parts() {
    return parts;
  }

  /** All parts of a kind, by id. */
  List<Part> parts(PartKind kind) {
    return parts.stream().filter(p -> p.kind() == kind).toList();
  }

  /** All bodies, by id. */
  List<Body> bodies() {
    return parts.stream().map(Part::body).toList();
  }

  Optional<Body> body(String id) {
    return station.part(id).map(Part::body);
  }

  List<Clash> clashes() {
    if (clashes == null) {
      clashes = Clashes.in(bodies(), contact);
    }
    return clashes;
  }

  /** How every motion went, the ways out among them. */
  List<Passage> passages() {
    if (passages == null) {
      passages =
          onlyMotion
              .map(id -> Passages.ofOne(station, id, contact))
              .orElseGet(() -> Passages.of(whole(), contact));
    }
    return passages;
  }

  List<Gap> gaps() {
    if (gaps == null) {
      gaps = Gaps.of(parts, contact);
    }
    return gaps;
  }

  /** Whether somebody asked how it is built. */
  boolean isPlanned() {
    return plan != null;
  }

  /** How it is built. */
  BuildPlan plan() {
    if (plan == null) {
      plan = Assembly.plan(station, contact);
    }
    return plan;
  }
}
