package sawstead.layout;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import sawstead.layout.packing.Budget;
import sawstead.layout.packing.Choices;
import sawstead.layout.packing.LowerBound;
import sawstead.layout.packing.PackedSheet;
import sawstead.layout.packing.Packing;
import sawstead.layout.packing.PackingSearch;
import sawstead.layout.packing.Tile;
import sawstead.layout.packing.Watch;

/**
 * Packs into what the seller makes of each sheet, instead of packing whole sheets and then looking
 * where the seller could cut: always carried, at times with more waste. A sheet becomes a grid of
 * pieces; the first along the length is as long as the longest part asks, the others share the
 * rest.
 */
final class CarryPacking {
  private final CutRequest request;
  private final BoardGroup whole;
  private final Carry carry;
  private final int sheetKind;
  private final Stock sheet;
  private final Carry.Grid grid;
  private final double lost;

  private CarryPacking(CutRequest request, BoardGroup whole, int sheetKind) {
    this.request = request;
    this.whole = whole;
    this.carry = request.carry().orElseThrow();
    this.sheetKind = sheetKind;
    this.sheet = whole.stock(sheetKind);
    this.grid = carry.fewest(whole.board(), sheet.length(), sheet.width());
    this.lost = carry.lost(request.kerfs());
  }

  /**
   * Searches with so many new sheets.
   *
   * @return packings of whole sheets whose outermost cuts are the seller's; empty when there are
   *     several sizes of new sheets, when a part is larger than what can be carried, or when so few
   *     sheets do not suffice
   */
  static Optional<Choices> search(
      CutRequest request, BoardGroup whole, int sheets, Budget budget, Watch watch) {
    int kinds = whole.problem().sheets().size();
    int only = -1;
    for (int kind = 0; kind < kinds; kind++) {
      if (!whole.stock(kind).offcut()) {
        if (only >= 0) {
          return Optional.empty();
        }
        only = kind;
      }
    }
    if (only < 0) {
      return Optional.empty();
    }
    return new CarryPacking(request, whole, only).search(sheets, budget, watch);
  }

  private Optional<Choices> search(int sheets, Budget budget, Watch watch) {
    List<Stock> stock = new ArrayList<>(stock(sheets));
    if (stock.isEmpty()) {
      return Optional.empty();
    }
    int pieces = stock.size();
    for (int kind = 0; kind < whole.problem().sheets().size(); kind++) {
      if (kind != sheetKind) {
        stock.add(whole.stock(kind));
      }
    }
    CutRequest divided =
        new CutRequest(
            request.boards(),
            request.parts().stream().filter(p -> p.board().equals(sheet.board())).toList(),
            stock,
            request.kerfs(),
            request.limits());
    if (!RequestCheck.fitAll(divided)) {
      return Optional.empty();
    }
    BoardGroup group = new BoardGroup(divided, whole.board(), false);
    int least = LowerBound.of(group.problem());
    return PackingSearch.search(
            group.problem(), new GroupLabour(divided, group), budget, least, watch)
        .map(
            c ->
                new Choices(
                    joined(c.leftoverFirst(), pieces),
                    joined(c.labourFirst(), pieces),
                    Optional.empty()));
  }

  /** The pieces of a sheet as stock of their own: the first along the length, then the others. */
  private List<Stock> stock(int sheets) {
    Trim trim = sheet.trim();
    double usable = sheet.usableLength() - (grid.along() - 1) * lost;
    double width = (sheet.usableWidth() - (grid.across() - 1) * lost) / grid.across();
    double edges = 2 * Math.max(carry.oversize(), Math.max(trim.left(), trim.right()));
    double longest =
        request.parts().stream()
            .filter(part -> part.board().equals(sheet.board()) && part.grain() == Grain.ALONG)
            .mapToDouble(Part::length)
            .max()
            .orElse(0);
    double first = Math.max(usable / grid.along(), Math.min(longest, usable));
    double others = grid.along() == 1 ? 0 : (usable - first) / (grid.along() - 1);
    if (!carry.takes(whole.board(), first + edges, width + edges)
        || sheet.quantity() < sheets
        || others < 0) {
      return List.of();
    }
    List<Stock> stock = new ArrayList<>();
    stock.add(piece("first", first, width, sheets * grid.across()));
    if (others > 0) {
      stock.add(piece("other", others, width, sheets * grid.across() * (grid.along() - 1)));
    }
    return stock;
  }

  private Stock piece(String name, double length, double width, int quantity) {
    return new Stock(name, sheet.board(), length, width, quantity, 0, 0, false, name);
  }

  /** Packed pieces put together to sheets again. */
  private Packing joined(Packing packing, int pieces) {
    List<PackedSheet> all = new ArrayList<>();
    List<List<Tile>> tiles = new ArrayList<>();
    for (int i = 0; i < pieces; i++) {
      tiles.add(new ArrayList<>());
    }
    for (PackedSheet packed : packing.sheets()) {
      if (packed.kind() < pieces) {
        tiles.get(packed.kind()).add(packed.tile());
      } else {
        int kind = packed.kind() - pieces;
        all.add(new PackedSheet(kind < sheetKind ? kind : kind + 1, packed.tile()));
      }
    }
    int counted = 0;
    while (tiles.stream().anyMatch(list -> !list.isEmpty())) {
      all.add(new PackedSheet(sheetKind, next(tiles)));
      counted++;
    }
    long price = counted * Math.round(sheet.price() * 100);
    return new Packing(all, counted, price, packing.interrupted());
  }

  /** Takes what one sheet gives off the lists. */
  private Tile next(List<List<Tile>> tiles) {
    int length = Steps.down(sheet.usableLength()) + whole.room();
    int width = Steps.down(sheet.usableWidth()) + whole.room();
    List<Tile> columns = new ArrayList<>();
    for (int along = 0; along < grid.along(); along++) {
      List<Tile> from = tiles.get(Math.min(along, tiles.size() - 1));
      List<Tile> rows = new ArrayList<>(from.subList(0, Math.min(grid.across(), from.size())));
      from.subList(0, rows.size()).clear();
      if (!rows.isEmpty()) {
        int used = rows.stream().mapToInt(Tile::width).sum();
        int extent = rows.stream().mapToInt(Tile::length).max().orElseThrow();
        columns.add(new Tile.Row(false, extent, width, rows, width - used));
      }
    }
    Collections.reverse(columns);
    int used = columns.stream().mapToInt(Tile::length).sum();
    return new Tile.Row(true, length, width, columns, length - used);
  }
}
