package sawstead.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sawstead.brief.SledWish;
import sawstead.solid.Box;
import sawstead.solid.Vec;
import sawstead.station.Figure;
import sawstead.station.Mover;
import sawstead.station.Part;

/**
 * Each sled on its saw.
 *
 * <ul>
 *   <li>{@code runner-tight} (stop as measured, mind in the band): a runner is wider than its slot;
 *   <li>{@code runner-loose} (mind): it plays so much that cuts wander;
 *   <li>{@code runner-bottoms} (stop, mind in the band): the sled would ride on its runners;
 *   <li>{@code exit-guard} (stop): the blade comes too near the end of the exit guard;
 *   <li>{@code runner-support} (mind): somewhere on the stroke too little runner is in its slot;
 *   <li>{@code sled-balance} (mind): somewhere on the stroke the balance point leaves the table;
 *   <li>{@code hands-near} (stop): the hand at the clamp comes nearer than {@link #HANDS} to the
 *       blade;
 *   <li>{@code sled-cuts} (note): what it cuts.
 * </ul>
 *
 * Balance and support are read from the solids at both ends of the stroke; between them they change
 * steadily, so these are the worst. Without a board: one lying on the sled helps at the start,
 * since its middle lies farther from the operator. Limits are common practice, no source.
 */
final class SledCheck implements Check {
  /** The most play of a runner, mm. */
  static final double LOOSE = 0.3;

  /** Wood behind the blade in the guard, mm. */
  static final double GUARD = 25;

  /** Least runner in its slot, mm. */
  static final double ENGAGED = 150;

  /** Nearest that a hand comes to the blade, mm. */
  static final double HANDS = 150;

  /** Rounding of differences of measurements, mm. */
  private static final double ROUNDING = 1e-6;

  @Override
  public Outcome judge(Scene scene) {
    Outcome.Notes notes = new Outcome.Notes();
    for (SledWish sled : scene.brief().sleds()) {
      String start = "sled-" + sled.id() + "-";
      for (Figure figure : scene.station().figures().values()) {
        if (figure.name().startsWith(start + "play-")) {
          play(scene, sled, figure, notes);
        } else if (figure.name().startsWith(start + "runnerBelow-")) {
          below(scene, sled, figure, notes);
        } else if (figure.name().equals(start + "guardSpare")) {
          guard(scene, sled, figure, notes);
        }
      }
      scene.station().mover(sled.id() + "/stroke").ifPresent(m -> stroke(scene, sled, m, notes));
      cuts(scene, sled, start, notes);
    }
    return notes.outcome();
  }

  private static void play(Scene scene, SledWish sled, Figure play, Outcome.Notes notes) {
    List<String> about = List.of(sled.id(), "alignment.widths");
    String slot = "slot " + play.name().substring(play.name().lastIndexOf('-') + 1);
    if (play.nominal() < -ROUNDING) {
      notes.add(
          Finding.general(
              Severity.STOP,
              "runner-tight",
              about,
              "a runner is %s wider than %s".formatted(scene.words().length(-play.nominal()), slot),
              "rip it narrower, or leave `runnerWidth` out"));
    } else if (play.low() < -ROUNDING) {
      notes.add(
          Finding.general(
              Severity.MIND,
              "runner-tight",
              about,
              "a runner may be %s wider than %s".formatted(scene.words().length(-play.low()), slot),
              "measure the slot at three places with a caliper and write them under `alignment`, or"
                  + " ease the runner with a scraper until it slides"));
    }
    if (play.nominal() > LOOSE) {
      notes.add(
          Finding.general(
              Severity.MIND,
              "runner-loose",
              about,
              "a runner plays %s in %s".formatted(scene.words().length(play.nominal()), slot),
              "use a wider runner, or expect cuts to wander by as much"));
    }
  }

  private static void below(Scene scene, SledWish sled, Figure below, Outcome.Notes notes) {
    notes.add(
        Margin.length(
            below.name(), "runner above the slot's floor", List.of(sled.id()), below.low(), 0));
    if (below.low() < -ROUNDING) {
      boolean sure = below.nominal() < -ROUNDING;
      notes.add(
          Finding.general(
              sure ? Severity.STOP : Severity.MIND,
              "runner-bottoms",
              List.of(sled.id(), "saw.slots"),
              "the runners "
                  + (sure ? "are" : "may be")
                  + " higher than their slot is deep, by "
                  + scene.words().length(sure ? -below.nominal() : -below.low())
                  + ": the base would ride on them and rock",
              "plane them lower, or choose a thinner sheet (`runnerSheet`)"));
    }
  }

  private static void guard(Scene scene, SledWish sled, Figure spare, Outcome.Notes notes) {
    notes.add(
        Margin.length(
            spare.name(),
            "exit guard behind the blade",
            List.of(sled.id()),
            spare.nominal(),
            GUARD));
    if (spare.nominal() < GUARD) {
      notes.add(
          Finding.general(
              Severity.STOP,
              "exit-guard",
              List.of(sled.id() + "/guard-end"),
              "when the cut ends only "
                  + scene.words().length(spare.nominal())
                  + " of the exit guard is left behind the blade, where "
                  + scene.words().length(GUARD)
                  + " belongs",
              "leave `guardLength` out, or make it "
                  + scene.words().length(GUARD - spare.nominal())
                  + " longer"));
    }
  }

  private static void stroke(Scene scene, SledWish sled, Mover mover, Outcome.Notes notes) {
    Optional<Box> table = scene.body("saw/table").map(b -> b.box());
    List<Part> moved =
        mover.moves().stream().flatMap(id -> scene.station().part(id).stream()).toList();
    if (table.isEmpty() || moved.isEmpty()) {
      return;
    }
    hands(scene, sled, mover, notes);
    List<Double> ends = List.of(mover.motion().from(), mover.motion().to());
    double off = 0;
    double engaged = Double.POSITIVE_INFINITY;
    for (double end : ends) {
      var place = mover.motion().at(end).after(mover.setting().set());
      Vec centre = place.apply(centre(moved));
      off = Math.max(off, table.get().low().y() - centre.y());
      off = Math.max(off, centre.y() - rear(scene, table.get()));
      for (Part part : runners(moved)) {
        Box box = part.body().moved(place).box();
        double in =
            Math.min(box.high().y(), table.get().high().y())
                - Math.max(box.low().y(), table.get().low().y());
        engaged = Math.min(engaged, in);
      }
    }
    notes.add(
        Margin.length(
            "runner-support",
            "runner in its slot before a cut",
            List.of(sled.id()),
            engaged,
            ENGAGED));
    if (engaged < ENGAGED) {
      notes.add(
          Finding.general(
              Severity.MIND,
              "runner-support",
              List.of(sled.id()),
              "on its stroke as little as "
                  + scene.words().length(engaged)
                  + " of a runner is in its slot, less than "
                  + scene.words().length(ENGAGED),
              "write a smaller `widest`"));
    }
    if (off > ROUNDING) {
      notes.add(
          Finding.general(
              Severity.MIND,
              "sled-balance",
              List.of(sled.id()),
              "on its stroke the balance point of the sled is "
                  + scene.words().length(off)
                  + " off the table: without a hand on it, it tips",
              "write a smaller `widest`, or a lighter sheet; hold the sled down by its fence"));
    }
  }

  /** The sled slides along the blade, so what counts is the distance across. */
  private static void hands(Scene scene, SledWish sled, Mover mover, Outcome.Notes notes) {
    Optional<Box> blade = scene.body("saw/blade").map(b -> b.box());
    for (Part guest : mover.setting().guests()) {
      if (blade.isEmpty() || !guest.id().endsWith("/hand")) {
        continue;
      }
      Box hand = guest.body().box();
      double away =
          Math.max(
              hand.low().x() - blade.get().high().x(), blade.get().low().x() - hand.high().x());
      notes.add(
          Margin.length(
              "hands", "hand at the clamp from the blade", List.of(sled.id()), away, HANDS));
      if (away < HANDS - GRID) {
        notes.add(
            Finding.general(
                Severity.STOP,
                "hands-near",
                List.of(sled.id() + "/clamp-handle", "saw/blade"),
                "the hand at the clamp is "
                    + scene.words().length(away)
                    + " from the blade, and "
                    + scene.words().length(HANDS)
                    + " is the least",
                "leave `hands` out, or write at least " + scene.words().length(HANDS)));
      }
    }
  }

  /** Solids lie on a grid of 2^-20 mm. */
  private static final double GRID = 2e-6;

  /** What carries a sled behind the table: the outfeed, where there is one. */
  private static double rear(Scene scene, Box table) {
    return scene
        .station()
        .site()
        .flatMap(s -> s.outfeed())
        .map(o -> o.walls().rear())
        .orElse(table.high().y());
  }

  private static List<Part> runners(List<Part> moved) {
    return moved.stream()
        .filter(p -> p.id().endsWith("/runner-left") || p.id().endsWith("/runner-right"))
        .toList();
  }

  private static Vec centre(List<Part> parts) {
    Vec moment = Vec.ZERO;
    double mass = 0;
    for (Part part : parts) {
      moment = moment.plus(part.body().centroid().scale(part.mass()));
      mass += part.mass();
    }
    return moment.scale(1 / mass);
  }

  private static void cuts(Scene scene, SledWish sled, String start, Outcome.Notes notes) {
    List<String> words = new ArrayList<>();
    for (String name : List.of("widest", "thickest", "longest", "chordAtBase", "stroke")) {
      Figure figure = scene.station().figures().get(start + name);
      if (figure == null) {
        return;
      }
      words.add(scene.words().length(figure.nominal()));
    }
    notes.add(
        Finding.general(
            Severity.NOTE,
            "sled-cuts",
            List.of(sled.id()),
            "with the blade at its highest it cuts boards up to "
                + words.get(0)
                + " wide, "
                + words.get(1)
                + " thick and "
                + words.get(2)
                + " long against the stop; the blade's chord at the base is "
                + words.get(3)
                + ", the stroke "
                + words.get(4),
            "raise the blade no more than 3 mm through the board: a lower blade cuts boards that much"
                + " thinner"));
  }
}
