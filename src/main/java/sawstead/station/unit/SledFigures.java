package sawstead.station.unit;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import sawstead.brief.MiterSlot;
import sawstead.measure.Measured;
import sawstead.station.FigureSum;
import sawstead.station.Gauge;
import sawstead.station.Term;

/**
 * What a sled can do, with bands: cut sizes stay, measurements of saw, blade and sheet may be off.
 */
final class SledFigures {
  private final SledPlan plan;
  private final List<FigureSum> sums = new ArrayList<>();

  private SledFigures(SledPlan plan) {
    this.plan = plan;
  }

  /** The figures of a sled; all names begin with {@code sled-<id>-}. */
  static List<FigureSum> of(SledPlan plan) {
    SledFigures figures = new SledFigures(plan);
    figures.blade();
    figures.way();
    for (SledPlan.Runner runner : plan.runners()) {
      figures.fit(runner);
    }
    return figures.sums;
  }

  private void add(String name, Function<Gauge, List<Term>> sum) {
    sums.add(new FigureSum("sled-" + plan.wish().id() + "-" + name, sum));
  }

  private void blade() {
    add(
        "thickest",
        g ->
            List.of(
                new Term("blade above the table", plan.crown(g)),
                new Term("base", -g.read(plan.sheet().thickness())),
                new Term("teeth above the board", -SledPlan.TEETH)));
    add("widest", g -> List.of(new Term("fence to bridge", plan.widest())));
    add("longest", g -> List.of(new Term("blade to stop", plan.stopFarthest())));
    add(
        "chordAtBase",
        g -> List.of(new Term("chord", 2 * plan.halfChord(g, g.read(plan.sheet().thickness())))));
    add(
        "guardSpare",
        g -> {
          double base = g.read(plan.sheet().thickness());
          double board = plan.crown(g) - SledPlan.TEETH;
          return List.of(
              new Term("exit guard", plan.guard()),
              new Term("fence", 2 * base),
              new Term("half chord at the base", -plan.halfChord(g, base)),
              new Term("half chord at the board's top", plan.halfChord(g, board)));
        });
  }

  private void way() {
    add("stroke", g -> List.of(new Term("from start to stop", plan.to() - plan.from())));
    add(
        "engaged",
        g ->
            List.of(
                new Term("sled's edge before the cut", plan.from(g)),
                new Term("runner's far end in the sled", plan.runnerTo())));
    double centre = SledParts.of(plan).centreY();
    add(
        "balance",
        g ->
            List.of(
                new Term("sled's edge before the cut", plan.from(g)),
                new Term("balance point in the sled", centre)));
    add(
        "intoOutfeed",
        g ->
            List.of(
                new Term("runner's far end at the stop", plan.to() + plan.runnerTo()),
                new Term("table", -g.read(plan.saw().table().depth()))));
  }

  private void fit(SledPlan.Runner runner) {
    List<Measured> widths = SledPlan.slotWidths(plan.brief(), plan.saw(), runner.slot());
    MiterSlot slot = plan.saw().slots().get(runner.slot() - 1);
    add(
        "play-" + runner.slot(),
        g ->
            List.of(
                new Term("slot", widths.stream().mapToDouble(g::read).min().orElseThrow()),
                new Term("runner", -runner.width())));
    add(
        "runnerBelow-" + runner.slot(),
        g ->
            List.of(
                new Term("slot", g.read(slot.depth())),
                new Term("runner", -g.read(plan.runnerSheet().thickness()))));
  }
}
