package sawstead.station.unit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.ServiceLoader;
import java.util.Set;
import sawstead.brief.Brief;
import sawstead.brief.OutfeedWish;
import sawstead.brief.Side;
import sawstead.station.DesignException;
import sawstead.station.Designer;
import sawstead.station.FigureSum;
import sawstead.station.SawPlace;
import sawstead.station.Site;
import sawstead.station.Station;
import sawstead.station.Unit;
import sawstead.station.UnitSource;

/** All units that a station can have. A new unit is one class in this package and one line here. */
public final class Units {
  private Units() {}

  /**
   * The station of a brief.
   *
   * @throws DesignException when no station follows from the brief; says where the cause stands in
   *     it
   */
  public static Station station(Brief brief) {
    return station(brief, Set.of());
  }

  /**
   * The station of a brief with some pockets in the other face than usual.
   *
   * @param turnedPockets joints, each named by {@link sawstead.station.Draft#pair}
   * @throws DesignException as {@link #station(Brief)}
   */
  public static Station station(Brief brief, Set<String> turnedPockets) {
    Optional<Site> site = Designer.survey(brief);
    List<Unit> units = new ArrayList<>();
    List<FigureSum> sums = new ArrayList<>();
    site.ifPresent(s -> units.addAll(of(s)));
    site.ifPresent(s -> HeightFigures.of(s).forEach(rule -> sums.add(rule.at(s))));
    if (site.isEmpty()) {
      brief.saw().ifPresent(saw -> units.add(new SawUnit(SawPlace.alone(saw), false)));
    }
    Optional<SawPlace> place = site.map(SawPlace::of).or(() -> brief.saw().map(SawPlace::alone));
    place.ifPresent(p -> jigs(brief, p, units, sums));
    for (int i = 0; i < brief.drawers().size() && place.isPresent(); i++) {
      units.add(new DrawerUnit(DrawerPlan.of(brief, place.get(), site, i)));
    }
    place
        .filter(p -> brief.storage().isPresent())
        .ifPresent(
            p -> {
              StoragePlan plan = StoragePlan.of(brief, p, site);
              units.add(new StorageUnit(plan, site));
              sums.addAll(plan.figures(p));
            });
    place
        .filter(p -> brief.paddle().isPresent())
        .ifPresent(
            p -> {
              units.add(new PaddleUnit(PaddlePlan.of(brief, p, site), site));
              if (site.isEmpty()) {
                // A hand-wheel swings past the paddle on a bench as on a station.
                units.add(new TiltTravel(p));
              }
            });
    site.filter(s -> brief.routerTable().isPresent())
        .map(s -> RouterPlan.of(brief, s))
        .ifPresent(
            plan -> {
              units.add(new RouterUnit(plan));
              sums.addAll(plan.figures());
            });
    units.add(new ExtraUnit(brief));
    units.addAll(DrawnUnit.of(brief, site));
    ServiceLoader.load(UnitSource.class).forEach(s -> units.addAll(s.units(brief, site)));
    units.add(new AddedCutsUnit(brief.cuts()));
    site.flatMap(s -> brief.room().map(r -> new RoomUnit(s, r))).ifPresent(units::add);
    site.ifPresent(s -> units.add(new StateUnit(brief.states())));
    return Designer.design(brief, site, units, sums, turnedPockets);
  }

  /** What is built for a saw, be it on a station or not. */
  private static void jigs(Brief brief, SawPlace place, List<Unit> units, List<FigureSum> sums) {
    for (int i = 0; i < brief.sleds().size(); i++) {
      SledPlan plan = SledPlan.of(brief, place, i);
      units.add(new SledUnit(plan));
      sums.addAll(SledFigures.of(plan));
    }
    for (int i = 0; i < brief.inserts().size(); i++) {
      units.add(new InsertUnit(InsertPlan.of(brief, place, i)));
    }
  }

  private static List<Unit> of(Site site) {
    List<Unit> units = new ArrayList<>();
    units.add(new StandUnit(site));
    units.add(new CasterUnit(site));
    // Its screws lie under the saw, so it is on before the saw is lifted up.
    site.saw().opening().ifPresent(o -> units.add(new TrayUnit(site, o)));
    units.add(new SawUnit(SawPlace.of(site), true));
    units.add(new BoltUnit(site));
    site.brief().vac().ifPresent(v -> units.add(new VacUnit(v, site)));
    site.outfeed()
        .ifPresent(box -> units.addAll(outfeed(site, box, site.wish().outfeed().orElseThrow())));
    for (Side side : List.of(Side.LEFT, Side.RIGHT)) {
      site.wing(side)
          .ifPresent(w -> units.add(new WingUnit(site, w, site.wish().wing(side).orElseThrow())));
    }
    units.add(new PortUnit(site));
    units.add(new GaugeTravel(site));
    units.add(new TiltTravel(SawPlace.of(site)));
    units.add(new FeedUnit(site));
    return units;
  }

  private static List<Unit> outfeed(Site site, Site.BoxPlan box, OutfeedWish wish) {
    List<Unit> units = new ArrayList<>();
    units.add(new OutfeedUnit(site, box, wish));
    units.add(new OutfeedLids(site, box, wish));
    if (box.leafDepth() > 0) {
      units.add(new OutfeedLeaf(box, wish));
    }
    return units;
  }
}
