package sawstead.layout.shop;

import java.util.ArrayList;
import java.util.List;
import sawstead.brief.Brief;
import sawstead.brief.Cutting;
import sawstead.brief.Sheet;
import sawstead.brief.SheetOffcut;
import sawstead.layout.Board;
import sawstead.layout.Carry;
import sawstead.layout.CutRequest;
import sawstead.layout.Defect;
import sawstead.layout.Grain;
import sawstead.layout.Kerfs;
import sawstead.layout.Part;
import sawstead.layout.SawLimits;
import sawstead.layout.Stock;
import sawstead.solid.Box;
import sawstead.station.Station;

/**
 * What a station asks of its sheets. Every panel is one part under its own id, so that a piece has
 * its name from the first cut on; the planner finds equal ones by itself. A panel that is no
 * rectangle is asked for as the rectangle around it.
 */
final class StationRequest {
  private StationRequest() {}

  static CutRequest of(Station station) {
    Brief brief = station.brief();
    List<Board> boards = new ArrayList<>();
    List<Stock> stock = new ArrayList<>();
    for (int i = 0; i < brief.stock().size(); i++) {
      Sheet sheet = brief.stock().get(i);
      boards.add(new Board(sheet.name(), sheet.thickness().nominal(), sheet.density().nominal()));
      stock.addAll(stock(sheet, "stock[" + i + "]"));
    }
    List<Part> parts = station.boards().values().stream().map(StationRequest::part).toList();
    Cutting cutting = brief.cutting();
    return new CutRequest(
        boards,
        parts,
        stock,
        new Kerfs(
            cutting.guidedKerf(),
            cutting.tableKerf(),
            cutting.carry().map(sawstead.brief.Carry::kerf).orElse(0.0)),
        limits(cutting),
        cutting.carry().map(c -> new Carry(c.longest(), c.widest(), c.heaviest(), c.oversize())));
  }

  private static Part part(sawstead.joinery.Board board) {
    Box plan = board.outline().bounds();
    return new Part(
        board.id(),
        plan.size().x(),
        plan.size().y(),
        1,
        Grain.ALONG,
        board.stock(),
        "panel " + board.id());
  }

  /** Offcuts first; the grain runs along the length of every stock, whatever the sheet's does. */
  private static List<Stock> stock(Sheet sheet, String where) {
    List<Stock> stock = new ArrayList<>();
    for (int i = 0; i < sheet.offcuts().size(); i++) {
      SheetOffcut offcut = sheet.offcuts().get(i);
      stock.add(
          new Stock(
              offcut.name(),
              sheet.name(),
              offcut.length(),
              offcut.width(),
              1,
              0,
              offcut.trim(),
              true,
              where + ".offcuts[" + i + "]",
              offcut.defects().stream()
                  .map(d -> new Defect(d.x(), d.y(), d.length(), d.width()))
                  .toList()));
    }
    if (sheet.quantity().orElse(1) > 0) {
      double length = sheet.length().nominal();
      double width = sheet.width().nominal();
      stock.add(
          new Stock(
              sheet.name(),
              sheet.name(),
              sheet.grainAlongLength() ? length : width,
              sheet.grainAlongLength() ? width : length,
              sheet.quantity().orElse(Stock.ENDLESS),
              sheet.price().orElse(0.0),
              sheet.trim().nominal(),
              false,
              where));
    }
    return stock;
  }

  private static SawLimits limits(Cutting cutting) {
    SawLimits usual = SawLimits.SMALL_SAW;
    return new SawLimits(
        cutting.longest(),
        cutting.widest(),
        cutting.heaviest(),
        cutting.ripCapacity(),
        cutting.sledCapacity(),
        usual.shortestFenceEdge(),
        usual.narrowestAtFence(),
        usual.shortestHeld(),
        usual.rest(),
        usual.clamped(),
        cutting.farthestStop(),
        cutting.infeed(),
        cutting.outfeed());
  }
}
