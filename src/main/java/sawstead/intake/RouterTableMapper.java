package sawstead.intake;

import java.util.Optional;
import sawstead.brief.RouterTable;
import sawstead.brief.Side;
import sawstead.brief.StationWish;
import sawstead.measure.Measured;

/** Reads {@code routerTable}, which needs a wing to hang in. */
final class RouterTableMapper {
  /** How much wider the base is than the motor at least, mm: its wall, and air for the motor. */
  private static final double AROUND = 6;

  private final Section brief;
  private final SheetNames sheets;

  RouterTableMapper(Section brief, SheetNames sheets) {
    this.brief = brief;
    this.sheets = sheets;
  }

  /** The router in a wing of a station; empty when the brief does not speak of one. */
  Optional<RouterTable> table(Optional<StationWish> station) {
    Section table = brief.section("routerTable");
    if (!brief.has("routerTable")) {
      return Optional.empty();
    }
    Side side = table.word("side", Side.class);
    if (station.flatMap(s -> s.wing(side)).isEmpty()) {
      table.problem(
          "side",
          "there is no " + side.word() + " wing that a router could hang in",
          "add the wing (station.wings." + side.word() + "), or write the other side");
    }
    Section plate = table.section("plate");
    Section body = table.section("router");
    Measured base = body.measure("base");
    Measured motor = body.measure("motor");
    if (base.nominal() < motor.nominal() + AROUND) {
      body.problem(
          "base",
          "a base of this diameter cannot hold a motor of that one",
          "measure both again: the base is the flat that lies on the work, the motor stands in it");
    }
    return Optional.of(
        new RouterTable(
            side,
            table.wish("x"),
            table.wish("y"),
            new RouterTable.Plate(
                plate.measure("length"),
                plate.measure("width"),
                plate.measure("thickness"),
                plate.measure("radius")),
            table.measure("ledge"),
            table.measure("rib"),
            new RouterTable.Body(
                base,
                body.measure("baseHeight"),
                motor,
                body.measure("motorLength"),
                body.measure("lift"),
                body.measure("mass")),
            table.measure("bit"),
            table.measure("above"),
            sheets.named(table, "sheet").orElse(sheets.standard())));
  }
}
