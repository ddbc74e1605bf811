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

/** A station on the bench of the inspector, with what several checks look at. */
final class Scene {
  /** Contact tolerance where the brief names no station, mm. */
  private static final double USUAL_CONTACT = 0.05;

  private final Station station;
  private final double contact;
  private final Words words;
  private final List<Part> parts;
  private final List<Clash> clashes;
  private final List<Passage> passages;
  private final List<Gap> gaps;
  private final BuildPlan plan;

  Scene(Station designed) {
    contact =
        designed
            .brief()
            .station()
            .map(StationWish::contact)
            .map(m -> m.nominal())
            .orElse(USUAL_CONTACT);
    plan = Assembly.plan(designed, contact);
    station = designed.with(ExitMotions.of(designed, plan.exits()));
    words = new Words(station.brief().units());
    parts = List.copyOf(station.parts().values());
    clashes = Clashes.in(bodies(), contact);
    passages = Passages.of(station, contact);
    gaps = Gaps.of(parts, contact);
  }

  Station station() {
    return station;
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
    return clashes;
  }

  List<Passage> passages() {
    return passages;
  }

  List<Gap> gaps() {
    return gaps;
  }

  /** How it is built. */
  BuildPlan plan() {
    return plan;
  }
}
