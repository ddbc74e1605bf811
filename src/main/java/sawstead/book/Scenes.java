package sawstead.book;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import sawstead.assembly.BenchStep;
import sawstead.assembly.BuildStep;
import sawstead.solid.Box;
import sawstead.solid.Vec;
import sawstead.station.Part;
import sawstead.station.PartKind;
import sawstead.station.Station;

/** What is seen at each step of a plan. */
final class Scenes {
  /** How far from its place a thing is drawn, in shares of the station's height. */
  private static final double AWAY = 0.3;

  /** How far apart the pieces are drawn that are put together on a bench, mm. */
  private static final double APART = 110;

  /** The units that make up the station itself; jigs lie beside it or on it. */
  private static final Set<String> HOME = Set.of("stand", "saw", "outfeed", "casters", "tray");

  /** What is farther from the station itself lies beside it, mm. */
  private static final double BESIDE = 250;

  /** How far from its place a thing is drawn that is made beside the station, mm. */
  private static final double NEAR = 140;

  private final Station station;
  private final List<BuildStep> steps;
  private final double away;
  private final Optional<Box> home;

  Scenes(Station station, List<BuildStep> steps) {
    this.station = station;
    this.steps = List.copyOf(steps);
    away = AWAY * all(station).size().z();
    home =
        station.parts().values().stream()
            .filter(p -> HOME.contains(p.unit()))
            .map(p -> p.body().box())
            .reduce(Box::union);
  }

  /** Whether a part lies so far beside the station that both in one picture would be small. */
  private boolean isBeside(Part part) {
    return home.map(h -> h.distance(part.body().box()) > BESIDE).orElse(false);
  }

  /** Whether all that a step brings is made beside the station, where nothing else is. */
  private boolean isBeside(BuildStep step) {
    return step.places().stream().allMatch(id -> isBeside(station.parts().get(id)));
  }

  /** The box around what is built. */
  static Box all(Station station) {
    return station.parts().values().stream()
        .filter(p -> !p.isRoom())
        .map(p -> p.body().box())
        .reduce(Box::union)
        .orElseThrow();
  }

  /** The station, finished, without what lies beside it. */
  List<Shown> finished() {
    return station.parts().values().stream()
        .filter(p -> !p.isRoom() && !isBeside(p))
        .map(p -> Shown.of(p, Vec.ZERO, tone(p, true)))
        .toList();
  }

  /** From its place to where a step's things are drawn, mm. */
  Vec before(BuildStep step) {
    return step.direction().scale(-(isBeside(step) ? NEAR : away));
  }

  /** What stands before a step, and what comes, away from its place. */
  List<Shown> coming(BuildStep step) {
    Set<String> standing = new HashSet<>();
    for (BuildStep earlier : steps) {
      if (earlier.number() < step.number()) {
        standing.addAll(earlier.places());
      }
    }
    boolean beside = isBeside(step);
    List<Shown> shown = new ArrayList<>();
    for (Part part : station.parts().values()) {
      if (step.places().contains(part.id())) {
        shown.add(Shown.of(part, before(step), tone(part, true)));
      } else if (standing.contains(part.id())
          && isBeside(part) == beside
          && (!beside || isLike(part, step))) {
        shown.add(Shown.of(part, Vec.ZERO, tone(part, false)));
      }
    }
    return shown;
  }

  /** Whether a part is of the unit that a step brings. */
  private static boolean isLike(Part part, BuildStep step) {
    return Part.unit(step.places().get(0)).equals(part.unit());
  }

  /** The middle of some parts in their places. */
  Vec middle(List<String> parts) {
    return parts.stream()
        .map(id -> station.parts().get(id).body().box())
        .reduce(Box::union)
        .orElseThrow()
        .centre();
  }

  /** From its place to where a piece is drawn that is put on on the bench, mm. */
  Vec apart(BenchStep turn) {
    return turn.direction().scale(-APART);
  }

  /** The pieces of a step, away from each other as they come together on the bench. */
  List<Shown> bench(BuildStep step) {
    List<Shown> shown = new ArrayList<>();
    for (BenchStep turn : step.bench()) {
      for (String id : turn.places()) {
        Part part = station.parts().get(id);
        shown.add(Shown.of(part, apart(turn), tone(part, true)));
      }
    }
    return shown;
  }

  private static Tone tone(Part part, boolean coming) {
    if (part.kind() == PartKind.PANEL) {
      return coming ? Tone.COMING : Tone.STANDING;
    }
    return coming ? Tone.COMING_OWNED : Tone.OWNED;
  }
}
