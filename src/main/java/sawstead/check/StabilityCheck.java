package sawstead.check;

import java.util.List;
import java.util.Optional;
import sawstead.brief.CasterSet;
import sawstead.brief.MobileFrame;
import sawstead.solid.Vec;
import sawstead.station.Site;

/**
 * The station neither falls over nor is pushed over, and its wheels carry it.
 *
 * <ul>
 *   <li>{@code tips} (stop): the centre of mass is not over the hull of the supports (REF-STB-02);
 *   <li>{@code tips-when-pushed} (stop below {@link #LEAST_PUSH}, mind below {@link #USUAL_PUSH}):
 *       the force at table height that begins to tip it (REF-STB-01) is one that feeding a board
 *       may have (REF-STB-09, common practice, no source);
 *   <li>{@code wheel-overload} (stop): a caster would carry more than its rating when only three
 *       touch the floor (REF-STB-04, not the dealers' third of REF-STB-03), or a bought frame,
 *       which is rated as a whole, more than its own.
 * </ul>
 *
 * Conservative: swivelled casters count at their nearest; heuristic in that lids are shut, the vac
 * is empty and no board lies on the table.
 */
final class StabilityCheck implements Check {
  /** Greatest feeding force to expect, N (REF-STB-09, common practice, no source). */
  static final double USUAL_PUSH = 150;

  /** Least feeding force to expect, N (REF-STB-09, common practice, no source). */
  static final double LEAST_PUSH = 50;

  @Override
  public Outcome judge(Scene scene) {
    Outcome.Notes notes = new Outcome.Notes();
    Optional<Balance> balance = Balance.of(scene);
    if (balance.isPresent() && scene.station().supports().size() >= 3) {
      scene.station().site().ifPresent(site -> judge(scene, site, balance.get(), notes));
    }
    return notes.outcome();
  }

  private static void judge(Scene scene, Site site, Balance balance, Outcome.Notes notes) {
    Words words = scene.words();
    List<String> about = List.of("stand/base");
    double margin = balance.margin();
    Vec floor = new Vec(balance.centre().x(), balance.centre().y(), 0);
    notes.add(
        Margin.length("static-margin", "centre of mass inside the supports", about, margin, 0));
    if (margin <= 0) {
      notes.add(
          Finding.stop(
              "tips",
              about,
              floor,
              "the centre of mass lies " + words.length(-margin) + " outside what it stands on",
              "make the stand wider on that side, or shorten what hangs out there"));
      return;
    }
    double force = balance.tippingForce(site.levels().table());
    notes.add(
        new Margin(
            "tipping-force",
            "push at table height before it tips",
            about,
            Dimension.FORCE,
            force,
            USUAL_PUSH));
    if (force < USUAL_PUSH) {
      notes.add(
          new Finding(
              force < LEAST_PUSH ? Severity.STOP : Severity.MIND,
              "tips-when-pushed",
              about,
              Optional.of(floor),
              "a push of "
                  + Words.force(force)
                  + " at table height begins to tip it; feeding a board takes "
                  + Words.force(LEAST_PUSH)
                  + " to "
                  + Words.force(USUAL_PUSH),
              "make the stand deeper, put weight on its base, or hold it to the wall"));
    }
    judgeWheels(scene, balance, notes);
  }

  private static void judgeWheels(Scene scene, Balance balance, Outcome.Notes notes) {
    if (scene.brief().casters() instanceof CasterSet set) {
      judgeLoad(
          scene,
          set.rating().nominal(),
          balance.greatestLoad(),
          "rating of a caster, two of them carrying most",
          "on a floor that is not flat one caster carries up to ",
          notes);
    } else if (scene.brief().casters() instanceof MobileFrame frame) {
      judgeLoad(
          scene,
          frame.rating().nominal(),
          balance.mass(),
          "rating of the bought frame",
          "the bought frame carries ",
          notes);
    }
  }

  private static void judgeLoad(
      Scene scene, double rating, double load, String what, String says, Outcome.Notes notes) {
    Words words = scene.words();
    List<String> about = List.of("casters");
    notes.add(new Margin("wheel-load", what, about, Dimension.MASS, rating, load));
    if (load > rating) {
      notes.add(
          Finding.general(
              Severity.STOP,
              "wheel-overload",
              about,
              says + words.mass(load) + ", more than its rating of " + words.mass(rating),
              "choose one rated for at least " + words.mass(Math.ceil(load))));
    }
  }
}
