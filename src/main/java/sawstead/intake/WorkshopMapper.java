package sawstead.intake;

import java.util.ArrayList;
import java.util.List;
import sawstead.brief.Brads;
import sawstead.brief.Router;
import sawstead.brief.ScrewStock;
import sawstead.brief.Workshop;
import sawstead.measure.Measured;

/** Reads the {@code workshop} section. */
final class WorkshopMapper {

  private final Section workshop;

  WorkshopMapper(Section workshop) {
    this.workshop = workshop;
  }

  Workshop workshop() {
    Section router = workshop.section("router");
    Section brads = workshop.section("brads");
    return new Workshop(
        screws(),
        workshop.list("holeSaws").stream().map(Measured::nominal).sorted().toList(),
        workshop.flag("glue"),
        new Brads(brads.plain("length"), brads.plain("diameter")),
        new Router(router.measure("base"), router.measure("shank"), router.measure("bit")));
  }

  private List<ScrewStock> screws() {
    List<ScrewStock> screws = new ArrayList<>();
    for (Section screw : workshop.sections("screws")) {
      screws.add(
          new ScrewStock(GaugeNumber.of(screw), screw.plain("length"), screw.flag("pocket")));
    }
    return screws;
  }
}
