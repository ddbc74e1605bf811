package sawstead.intake;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import sawstead.brief.DrawerPlace;
import sawstead.brief.DrawerWish;
import sawstead.brief.Sheet;
import sawstead.brief.StationWish;

/** Reads {@code drawers}. */
final class DrawersMapper {

  private final Section brief;
  private final SheetNames sheets;

  DrawersMapper(Section brief, SheetNames sheets) {
    this.brief = brief;
    this.sheets = sheets;
  }

  List<DrawerWish> drawers(Optional<StationWish> station) {
    Duplicates ids = new Duplicates();
    List<DrawerWish> drawers = new ArrayList<>();
    for (Section drawer : brief.sections("drawers")) {
      Section own = drawer.section("case");
      drawers.add(
          new DrawerWish(
              ids.fresh(drawer, "id"),
              place(drawer, station),
              sheets.named(drawer, "sheet").orElse(sheets.standard()),
              sheets.named(drawer, "floorSheet").orElseGet(this::thinnest),
              drawer.measure("slide"),
              drawer.wish("width"),
              drawer.wish("height"),
              drawer.wish("travel"),
              own.measure("width"),
              own.measure("depth"),
              own.measure("height"),
              ContentsMapper.contents(drawer)));
    }
    return drawers;
  }

  private static DrawerPlace place(Section drawer, Optional<StationWish> station) {
    DrawerPlace in = drawer.word("in", DrawerPlace.class);
    boolean has =
        switch (in) {
          case CASE -> true;
          case WING_LEFT -> station.flatMap(StationWish::leftWing).isPresent();
          case WING_RIGHT -> station.flatMap(StationWish::rightWing).isPresent();
        };
    if (!has) {
      drawer.problem(
          "in",
          "there is no such wing for the drawer to run in",
          "add the wing (station.wings), or write `case`");
    }
    return in;
  }

  private String thinnest() {
    return sheets.sheets().stream()
        .min(Comparator.comparingDouble(s -> s.thickness().nominal()))
        .map(Sheet::name)
        .orElse("");
  }
}
