package sawstead.brief;

import static java.util.Objects.requireNonNull;

import java.util.List;
import java.util.Optional;
import sawstead.measure.Unit;

/**
 * Everything a woodworker wrote down, one record a section of the file. All lengths are mm,
 * whatever the file was written in; x is from the blade plane to the right, y from the front edge
 * of the saw's table away from the operator, "below" is down from the table's top.
 *
 * @param name what the station is called, as shown
 * @param slug the name as a folder name, `[a-z0-9-]+`
 * @param units the unit that plain numbers were in and that answers are given in
 * @param saw the saw; empty when the brief only has panels of the user's own
 * @param blades blades at hand, exactly one of them mounted; empty without a saw
 * @param alignment what was measured of blade and slots
 * @param sleds sleds to be built
 * @param inserts zero-clearance inserts to be built
 * @param paddle a knee paddle to be built
 * @param routerTable a router that hangs in a wing
 * @param drawers drawers to be built
 * @param storage a rack to be built
 * @param stock sheets at hand, the first is the default
 * @param vac the shop vac, if one lives in the stand
 * @param casters what the stand rolls on
 * @param station what is to be built; empty when there is no saw
 * @param room the room it stands in, if it was measured
 * @param feeds boards that are fed; empty when the brief leaves them to habit
 * @param states motions to be made while others stand elsewhere
 * @param cutting kerfs, and what can be brought to the table saw
 * @param workshop screws, hole saws and glue at hand
 * @param tools tools at hand and the room that they take up
 * @param extras panels of the user's own
 * @param cuts further cuts in panels of the station
 * @param own units of the user's own
 */
public record Brief(
    String name,
    String slug,
    Unit units,
    Optional<Saw> saw,
    List<OwnedBlade> blades,
    Optional<Alignment> alignment,
    List<SledWish> sleds,
    List<InsertWish> inserts,
    Optional<PaddleWish> paddle,
    Optional<RouterTable> routerTable,
    List<DrawerWish> drawers,
    Optional<StorageWish> storage,
    List<Sheet> stock,
    Optional<Vac> vac,
    Casters casters,
    Optional<StationWish> station,
    Optional<Room> room,
    Optional<List<Feed>> feeds,
    List<State> states,
    Cutting cutting,
    Workshop workshop,
    Tools tools,
    List<ExtraPanel> extras,
    List<AddedCuts> cuts,
    List<OwnUnit> own) {
  public Brief {
    requireNonNull(name, "name");
    requireNonNull(slug, "slug");
    requireNonNull(units, "units");
    requireNonNull(saw, "saw");
    blades = List.copyOf(blades);
    requireNonNull(alignment, "alignment");
    sleds = List.copyOf(sleds);
    inserts = List.copyOf(inserts);
    requireNonNull(paddle, "paddle");
    requireNonNull(routerTable, "routerTable");
    drawers = List.copyOf(drawers);
    requireNonNull(storage, "storage");
    stock = List.copyOf(stock);
    requireNonNull(vac, "vac");
    requireNonNull(casters, "casters");
    requireNonNull(station, "station");
    requireNonNull(room, "room");
    feeds = feeds.map(List::copyOf);
    states = List.copyOf(states);
    requireNonNull(cutting, "cutting");
    requireNonNull(workshop, "workshop");
    requireNonNull(tools, "tools");
    extras = List.copyOf(extras);
    cuts = List.copyOf(cuts);
    own = List.copyOf(own);
  }

  /** The blade on the saw, where there is a saw. */
  public Optional<OwnedBlade> mounted() {
    return blades.stream().filter(OwnedBlade::mounted).findFirst();
  }

  /**
   * The sheet of that name.
   *
   * @throws IllegalArgumentException when the brief has no such sheet; the reader of briefs refuses
   *     such a file
   */
  public Sheet sheet(String name) {
    return stock.stream()
        .filter(s -> s.name().equals(name))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("no sheet named " + name));
  }
}
