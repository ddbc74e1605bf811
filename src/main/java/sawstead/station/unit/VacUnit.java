package sawstead.station.unit;

import java.util.List;
import sawstead.brief.Tier;
import sawstead.brief.Vac;
import sawstead.solid.Layer;
import sawstead.solid.Outline;
import sawstead.solid.Placement;
import sawstead.solid.Stack;
import sawstead.solid.Vec;
import sawstead.station.Area;
import sawstead.station.Draft;
import sawstead.station.PartKind;
import sawstead.station.Site;
import sawstead.station.Unit;

/** The shop vac, standing in the middle of the bay on the base. */
final class VacUnit implements Unit {

  private final Vac vac;
  private final Site site;

  VacUnit(Vac vac, Site site) {
    this.vac = vac;
    this.site = site;
  }

  @Override
  public void place(Draft draft) {
    Area bay = new StandFrame(site).bay();
    List<Layer> layers = vac.tiers().stream().map(VacUnit::layer).toList();
    draft.body(
        PartKind.ENVELOPE,
        "vac/body",
        new Stack(layers),
        Placement.at(new Vec(bay.centreX(), bay.centreY(), site.levels().baseTop())),
        vac.mass().nominal());
    draft.step(
        List.of("vac/body"),
        "slide it in by the open side",
        new Vec(0, 1, 0),
        List.of(
            "unplug saw and vac before you reach in; wear a mask when you empty it, fine wood dust harms lungs"));
  }

  private static Layer layer(Tier tier) {
    double width = tier.width().nominal();
    double depth = tier.depth().nominal();
    Outline outline =
        tier.round()
            ? Outline.circle(0, 0, width)
            : Outline.rectangle(-width / 2, -depth / 2, width / 2, depth / 2);
    return new Layer(outline, tier.height().nominal());
  }
}
