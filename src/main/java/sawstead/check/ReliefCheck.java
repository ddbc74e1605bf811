package sawstead.check;

import java.util.List;
import java.util.Optional;
import sawstead.brief.MiterSlot;
import sawstead.brief.OutfeedWish;
import sawstead.brief.StationWish;
import sawstead.solid.Vec;
import sawstead.station.Routing;
import sawstead.station.Site;

/**
 * The widest bar or washer, its slot off by its whole band, passes the relief groove with the side
 * clearance that was wished for: {@code relief-narrow}, stop when it does not pass, mind when it
 * passes with less. The floor is judged by its figure, the length by the motion of the gauge.
 *
 * <p>Exact, from the grooves as they are cut.
 */
final class ReliefCheck implements Check {
  /** Rounding of coordinates, mm. */
  private static final double SAME = 1e-6;

  @Override
  public Outcome judge(Scene scene) {
    Optional<Site> site = scene.station().site();
    Optional<OutfeedWish> outfeed = scene.brief().station().flatMap(StationWish::outfeed);
    if (site.isEmpty() || outfeed.isEmpty()) {
      return Outcome.of(List.of());
    }
    Outcome.Notes notes = new Outcome.Notes();
    double wished = outfeed.get().grooveSide().nominal();
    for (Routing groove : Routing.of(site.get(), scene.station().boards().values())) {
      MiterSlot slot = site.get().saw().slots().get(groove.slot() - 1);
      double half = Math.max(slot.width().high(), slot.footWidth().high()) / 2;
      double side =
          Math.min(
              slot.at().nominal() - slot.at().minus() - half - groove.left(),
              groove.right() - slot.at().nominal() - slot.at().plus() - half);
      notes.add(
          Margin.length(
              "relief-side-" + groove.slot() + "-" + groove.panel(),
              "beside the bar in the relief groove, at the worst",
              List.of(groove.panel()),
              side,
              wished));
      if (side < wished - SAME) {
        notes.add(finding(scene, groove, side, wished));
      }
    }
    return notes.outcome();
  }

  private static Finding finding(Scene scene, Routing groove, double side, double wished) {
    double z = scene.body(groove.panel()).orElseThrow().box().high().z();
    return new Finding(
        side < 0 ? Severity.STOP : Severity.MIND,
        "relief-narrow",
        List.of(groove.panel()),
        Optional.of(new Vec((groove.left() + groove.right()) / 2, groove.front(), z)),
        "the relief groove of slot "
            + groove.slot()
            + " leaves "
            + scene.words().length(side)
            + " beside the widest bar or washer when its slot is off the wrong way",
        "rout it " + scene.words().atLeast(2 * (wished - side)) + " wider, about the same middle");
  }
}
