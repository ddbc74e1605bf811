package sawstead.intake;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sawstead.brief.Brief;
import sawstead.brief.ExtraPanel;
import sawstead.brief.InsertWish;
import sawstead.brief.OwnedBlade;
import sawstead.brief.PaddleWish;
import sawstead.brief.Saw;
import sawstead.brief.Sheet;
import sawstead.brief.SledWish;
import sawstead.brief.StationWish;
import sawstead.brief.Vac;

/** Reads the whole brief, section by section. */
final class BriefMapper {

  /** What is built for a saw, be it on a station or not. */
  private static final List<String> JIGS =
      List.of("sleds", "inserts", "paddle", "drawers", "storage");

  private final Section brief;

  BriefMapper(Section brief) {
    this.brief = brief;
  }

  Brief brief() {
    sectionsFitTogether();
    GlueCheck.in(brief);
    String name = brief.text("name").orElse("station");
    SheetNames sheets = new SheetNames(new StockMapper(brief).sheets());
    Optional<Saw> saw =
        brief.has("saw")
            ? Optional.of(new SawMapper(brief.section("saw")).saw())
            : Optional.empty();
    Optional<BladesMapper> blades = saw.map(s -> new BladesMapper(brief, s));
    Optional<SledsMapper> sleds = saw.map(s -> new SledsMapper(brief, s, sheets.sheets()));
    List<SledWish> wishes = sleds.map(SledsMapper::sleds).orElse(List.of());
    List<Sheet> stock = new ArrayList<>(sheets.sheets());
    sleds.ifPresent(s -> stock.addAll(s.strips()));
    List<OwnedBlade> owned = blades.map(BladesMapper::blades).orElse(List.of());
    List<InsertWish> inserts =
        saw.map(s -> new InsertsMapper(brief, s, owned, sheets).inserts()).orElse(List.of());
    Optional<PaddleWish> paddle = saw.flatMap(s -> new PaddleMapper(brief, sheets).paddle());
    Optional<Vac> vac = new VacMapper(brief).vac();
    Optional<StationWish> station =
        saw.filter(s -> !isAlone())
            .map(s -> new StationMapper(brief.section("station"), s, vac.isPresent(), sheets))
            .map(StationMapper::station);
    ExtrasMapper extras = new ExtrasMapper(brief, sheets);
    RoomMapper room = new RoomMapper(brief);
    List<ExtraPanel> panels = extras.panels();
    return new Brief(
        name,
        Slug.of(name),
        brief.reading().units(),
        saw,
        owned,
        blades.flatMap(BladesMapper::alignment),
        wishes,
        inserts,
        paddle,
        saw.flatMap(s -> new RouterTableMapper(brief, sheets).table(station)),
        saw.map(s -> new DrawersMapper(brief, sheets).drawers(station)).orElse(List.of()),
        saw.flatMap(s -> new StorageMapper(brief, sheets).storage()),
        stock,
        vac,
        new CastersMapper(brief).casters(),
        station,
        room.room(),
        room.feeds(),
        room.states(),
        new CuttingMapper(brief.section("cutting"), saw).cutting(),
        new WorkshopMapper(brief.section("workshop")).workshop(),
        new ToolsMapper(brief.section("tools")).tools(),
        panels,
        extras.cuts(panels),
        new OwnMapper(brief, sheets).units());
  }

  /** Whether jigs are wanted without a station: they say so by having no section for it. */
  private boolean isAlone() {
    return JIGS.stream().anyMatch(brief::has) && !brief.has("station");
  }

  private void sectionsFitTogether() {
    if (brief.has("saw")) {
      return;
    }
    for (String key :
        List.of(
            "blades",
            "alignment",
            "sleds",
            "inserts",
            "paddle",
            "routerTable",
            "drawers",
            "storage")) {
      if (brief.has(key)) {
        brief.problem(
            key,
            "`" + key + "` follow from a saw, and there is none",
            "add the section `saw`; models/first-brief.yaml is the smallest example");
      }
    }
    if (brief.has("station")) {
      brief.problem(
          "station",
          "there is a station, but no saw to build it for",
          "add the section `saw`, or remove `station` to have only your extras");
    } else if (!brief.has("extras") && !brief.has("own")) {
      brief.problem(
          "saw",
          "there is no saw, and there are no extras: nothing is to be built",
          "add the section `saw`; models/first-brief.yaml is the smallest example");
    }
  }
}
