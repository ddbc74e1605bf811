package sawstead.check;

import java.util.List;
import java.util.Optional;
import sawstead.brief.InsertWish;
import sawstead.brief.Saw;
import sawstead.solid.Body;
import sawstead.solid.Overlap;
import sawstead.station.Mover;

/**
 * Each insert in the throat.
 *
 * <ul>
 *   <li>{@code insert-knife} (stop): it stands where the riving knife or splitter stands, which
 *       then could not be used;
 *   <li>{@code insert-rim} (mind): its rim is too thin to stand on the ledge;
 *   <li>{@code insert-low} (mind): its sheet is thinner than the ledge is deep;
 *   <li>{@code insert-kerf} (note): how its kerf is cut.
 * </ul>
 *
 * The first is exact on the solids; the others compare measurements (common practice, no source).
 */
final class InsertCheck implements Check {
  /** Least rim, mm. */
  static final double RIM = 2;

  /** How far below the table is no matter, mm. */
  static final double LOW = 0.5;

  @Override
  public Outcome judge(Scene scene) {
    Outcome.Notes notes = new Outcome.Notes();
    for (InsertWish insert : scene.brief().inserts()) {
      knife(scene, insert, notes);
      rim(scene, insert, notes);
      notes.add(
          Finding.general(
              Severity.NOTE,
              "insert-kerf",
              List.of(insert.id() + "/plate"),
              "the kerf of " + insert.id() + " is cut by the blade " + insert.blade() + " itself",
              "knife refitted and a batten clamped across, clear of the kerf: stand aside, raise the"
                  + " blade slowly, hands off, for 90 degrees only; unplug before you change anything"));
    }
    return notes.outcome();
  }

  private static void knife(Scene scene, InsertWish insert, Outcome.Notes notes) {
    Optional<Body> knife = scene.body("saw/knife");
    Optional<Mover> lifts = scene.station().mover(insert.id() + "/lifts-out");
    Optional<Body> plate = scene.body(insert.id() + "/plate");
    if (knife.isEmpty() || lifts.isEmpty() || plate.isEmpty()) {
      return;
    }
    Body inSaw = plate.get().moved(lifts.get().setting().set());
    Overlap.between(inSaw, knife.get())
        .filter(o -> o.depth() > scene.contact())
        .ifPresent(
            o ->
                notes.add(
                    Finding.stop(
                        "insert-knife",
                        List.of(insert.id() + "/plate", "saw/knife"),
                        o.centroid(),
                        "the insert stands where the riving knife stands, "
                            + scene.words().length(o.depth())
                            + " deep",
                        "slot it for the knife (`knifeSlot: true`): an insert never costs the knife")));
  }

  private static void rim(Scene scene, InsertWish insert, Outcome.Notes notes) {
    Saw saw = scene.brief().saw().orElseThrow();
    double ledge = saw.throat().ledge().nominal();
    double sheet = scene.brief().sheet(insert.sheet()).thickness().nominal();
    List<String> about = List.of(insert.id() + "/plate", "saw.throat.ledge");
    if (Math.min(sheet, ledge) < RIM) {
      notes.add(
          Finding.general(
              Severity.MIND,
              "insert-rim",
              about,
              "the insert's rim can only be %s thick on a ledge of %s"
                  .formatted(
                      scene.words().length(Math.min(sheet, ledge)), scene.words().length(ledge)),
              "cut the insert from something tougher than plywood there, or have a metal one slotted"));
    } else if (sheet < ledge - LOW) {
      notes.add(
          Finding.general(
              Severity.MIND,
              "insert-low",
              about,
              "the insert's sheet is "
                  + scene.words().length(ledge - sheet)
                  + " thinner than the ledge is deep",
              "choose a thicker sheet, or raise it on screws or shims until it lies level"));
    }
  }
}
