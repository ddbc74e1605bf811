package sawstead.station.unit;

import java.util.ArrayList;
import java.util.List;
import sawstead.brief.CasterSet;
import sawstead.brief.MiterSlot;
import sawstead.brief.MobileFrame;
import sawstead.brief.OutfeedWish;
import sawstead.brief.Sheet;
import sawstead.brief.Side;
import sawstead.brief.Vac;
import sawstead.station.FigureRule;
import sawstead.station.Gauge;
import sawstead.station.Levels;
import sawstead.station.Site;
import sawstead.station.Term;

/** The figures of a station: heights, drops and what the vac has round it. */
final class HeightFigures {
  private HeightFigures() {}

  private record Rule(String name, java.util.function.BiFunction<Site, Gauge, List<Term>> sum)
      implements FigureRule {
    @Override
    public List<Term> terms(Site site, Gauge gauge) {
      return sum.apply(site, gauge);
    }
  }

  /** The figures that this site has. */
  static List<FigureRule> of(Site site) {
    List<FigureRule> rules = new ArrayList<>();
    rules.add(new Rule("workingHeight", HeightFigures::workingHeight));
    site.outfeed()
        .ifPresent(box -> rules.add(new Rule("outfeedDrop", (s, g) -> outfeedDrop(s, g, box))));
    for (Side side : List.of(Side.LEFT, Side.RIGHT)) {
      site.wing(side)
          .ifPresent(
              wing ->
                  rules.add(new Rule(side.word() + "WingDrop", (s, g) -> wingDrop(s, g, wing))));
    }
    site.outfeed().ifPresent(box -> reliefs(rules, site, box));
    site.brief().vac().ifPresent(vac -> vacFigures(rules, site, vac));
    return rules;
  }

  private static List<Term> workingHeight(Site site, Gauge gauge) {
    List<Term> sum = new ArrayList<>();
    if (site.brief().casters() instanceof CasterSet) {
      sum.add(new Term("casters", Levels.roll(site.brief(), gauge)));
    } else if (site.brief().casters() instanceof MobileFrame) {
      sum.add(new Term("mobile frame", Levels.roll(site.brief(), gauge)));
    }
    double sheet = gauge.read(site.sheet().thickness());
    sum.add(new Term("base", sheet));
    sum.add(new Term("leg", site.levels().leg()));
    sum.add(new Term("top", sheet));
    sum.add(new Term("saw", gauge.read(site.saw().table().height())));
    return sum;
  }

  /**
   * How far the outfeed lies below the lowest point of the table. A box that stands on the stand's
   * top takes nothing else with it: casters, base, legs and top cancel. What hangs is set by a
   * straightedge, so the same sum holds.
   */
  private static List<Term> outfeedDrop(Site site, Gauge gauge, Site.BoxPlan box) {
    OutfeedWish wish = site.wish().outfeed().orElseThrow();
    double foot =
        box.mount() == sawstead.brief.Mount.ON_TOP ? box.foot() - site.levels().sawFeet() : 0;
    double wall = box.rim() - site.levels().sawFeet() - foot;
    List<Term> sum = new ArrayList<>();
    sum.add(new Term("lowest table", lowestHeight(site, gauge)));
    sum.add(new Term("settling", -gauge.read(site.saw().feet().settling())));
    if (foot != 0) {
      sum.add(new Term("shim", -gauge.read(wish.shim())));
    }
    sum.add(new Term("box wall", -wall));
    sum.add(new Term("lid", -gauge.read(box.lid().thickness())));
    return sum;
  }

  private static double lowestHeight(Site site, Gauge gauge) {
    return site.saw().table().heights().stream().mapToDouble(gauge::read).min().orElseThrow();
  }

  private static List<Term> wingDrop(Site site, Gauge gauge, Site.WingPlan wing) {
    double rise = wing.surface() - wing.sheet().thickness().nominal() - site.levels().sawFeet();
    return List.of(
        new Term("lowest table", lowestHeight(site, gauge)),
        new Term("settling", -gauge.read(site.saw().feet().settling())),
        new Term("wing side over the stand's top", -rise),
        new Term("wing top", -gauge.read(wing.sheet().thickness())));
  }

  /**
   * What is left of the lid under each relief groove, and how much lower its floor is than bar or
   * washer.
   */
  private static void reliefs(List<FigureRule> rules, Site site, Site.BoxPlan box) {
    OutfeedWish wish = site.wish().outfeed().orElseThrow();
    Sheet lid = box.lid();
    for (Groove groove : Groove.of(site, wish)) {
      MiterSlot slot = site.saw().slots().get(groove.slot() - 1);
      rules.add(
          new Rule(
              "reliefLeft-" + groove.slot(),
              (s, g) ->
                  List.of(
                      new Term("lid", g.read(lid.thickness())),
                      new Term("relief groove", -groove.depth()))));
      rules.add(
          new Rule(
              "reliefFloor-" + groove.slot(),
              (s, g) -> {
                List<Term> sum = new ArrayList<>();
                sum.add(new Term("relief groove", groove.depth()));
                outfeedDrop(s, g, box).forEach(sum::add);
                sum.add(new Term("lowest table", -lowestHeight(s, g)));
                sum.add(new Term("table at the rear", lowestRear(s, g)));
                sum.add(new Term("slot", -g.read(slot.depth())));
                return sum;
              }));
    }
  }

  private static double lowestRear(Site site, Gauge gauge) {
    return Math.min(
        gauge.read(site.saw().table().rearLeft()), gauge.read(site.saw().table().rearRight()));
  }

  private static void vacFigures(List<FigureRule> rules, Site site, Vac vac) {
    rules.add(
        new Rule(
            "vacHeadroom",
            (s, g) ->
                List.of(
                    new Term("leg", s.levels().leg()), new Term("vac", -Levels.height(vac, g)))));
    StandFrame frame = new StandFrame(site);
    rules.add(
        new Rule(
            "vacSideRoom",
            (s, g) ->
                List.of(
                    new Term("bay", frame.bay().width()),
                    new Term(
                        "vac",
                        -vac.tiers().stream()
                            .mapToDouble(t -> g.read(t.width()))
                            .max()
                            .orElse(0)))));
    rules.add(
        new Rule(
            "vacDepthRoom",
            (s, g) ->
                List.of(
                    new Term("bay", frame.bay().depth()),
                    new Term(
                        "vac",
                        -vac.tiers().stream()
                            .mapToDouble(t -> g.read(t.depth()))
                            .max()
                            .orElse(0)))));
    if (site.wish().stand().vacSide().isPresent()) {
      double stretcher = site.wish().stand().stretcher().nominal();
      rules.add(
          new Rule(
              "vacDoorway",
              (s, g) ->
                  List.of(
                      new Term("leg", s.levels().leg()),
                      new Term("upper stretcher", -stretcher),
                      new Term("vac", -Levels.height(vac, g)))));
    }
  }
}
