package sawstead.layout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import sawstead.layout.packing.PackedSheet;

/**
 * Turns packed sheets into a plan: takes them apart, gives the pieces their names, brings all cuts
 * into one order. Offcuts come first and the sheet with the largest leftover last, so that spare
 * stock is whole for as long as something may go wrong.
 */
final class CutAssembly {
  /** Both sides of a leftover that is worth keeping, mm; common practice, no source. */
  private static final double WORTH_KEEPING = 100;

  private final CutRequest request;
  private final List<SawNode> trees = new ArrayList<>();
  private final List<Stock> stocks = new ArrayList<>();
  private final List<List<PlacedPiece>> pieces = new ArrayList<>();
  private final List<Offcut> offcuts = new ArrayList<>();
  private int unsafe;
  private int tooLarge;

  /** A sheet taken apart. */
  private record Opened(Stock stock, SawNode tree) {}

  CutAssembly(CutRequest request) {
    this.request = request;
  }

  /** Adds the sheets of one board. */
  void add(BoardGroup group, List<PackedSheet> sheets) {
    GroupLabour labour = new GroupLabour(request, group);
    List<Opened> opened = new ArrayList<>();
    for (PackedSheet sheet : sheets) {
      opened.add(new Opened(group.stock(sheet.kind()), labour.tree(sheet)));
      tooLarge += labour.tooLarge(sheet);
    }
    opened.sort(
        Comparator.comparing((Opened sheet) -> !sheet.stock().offcut())
            .thenComparing(sheet -> largestLeft(sheet.tree())));
    for (Opened sheet : opened) {
      trees.add(sheet.tree());
      stocks.add(sheet.stock());
      pieces.add(new ArrayList<>());
      collect(group, sheet.tree());
    }
  }

  private static long largestLeft(SawNode node) {
    if (node instanceof SawNode.Sawn sawn) {
      return Math.max(largestLeft(sawn.near()), largestLeft(sawn.far()));
    }
    return node instanceof SawNode.Left left
        ? (long) left.region().length() * left.region().width()
        : 0;
  }

  private void collect(BoardGroup group, SawNode node) {
    if (node instanceof SawNode.Sawn sawn) {
      unsafe += sawn.how().safe() ? 0 : 1;
      collect(group, sawn.near());
      collect(group, sawn.far());
    } else if (node instanceof SawNode.Finished finished) {
      Region region = finished.region();
      BoardGroup.Copy copy = group.next(finished.piece().kind());
      pieces
          .get(pieces.size() - 1)
          .add(
              new PlacedPiece(
                  copy.part().name(),
                  Steps.mm(region.x0()),
                  Steps.mm(region.y0()),
                  Steps.mm(finished.piece().length() - group.room()),
                  Steps.mm(finished.piece().width() - group.room()),
                  copy.turned() || finished.piece().turned()));
    } else if (node instanceof SawNode.Left left) {
      offcut(left.region());
    }
  }

  private void offcut(Region region) {
    double length = Steps.mm(region.length());
    double width = Steps.mm(region.width());
    if (Math.min(length, width) >= WORTH_KEEPING) {
      offcuts.add(
          new Offcut(
              stocks.get(stocks.size() - 1).name(),
              stocks.size(),
              Steps.mm(region.x0()),
              Steps.mm(region.y0()),
              length,
              width));
    }
  }

  /** The plan of all sheets added. */
  CutPlan plan(int bound, boolean interrupted) {
    Sequence sequence = Sequence.of(trees);
    List<SheetPlan> sheets = new ArrayList<>();
    for (int i = 0; i < stocks.size(); i++) {
      Stock stock = stocks.get(i);
      sheets.add(
          new SheetPlan(
              stock.name(), stock.length(), stock.width(), pieces.get(i), sequence.cuts().get(i)));
    }
    offcuts.sort(Comparator.comparingDouble(Offcut::area).reversed());
    List<String> cautions = new ArrayList<>();
    if (unsafe > 0) {
      cautions.add(
          unsafe
              + (unsafe == 1 ? " cut frees" : " cuts free")
              + " strips too narrow to clamp under the rail (less than "
              + Lengths.text(request.limits().clamped())
              + " mm): take them from a wider piece, or plan them wider");
    }
    if (tooLarge > 0) {
      cautions.add(
          tooLarge
              + (tooLarge == 1 ? " piece comes" : " pieces come")
              + " home larger or heavier than `carry` allows, because the parts on it leave the"
              + " seller's saw no room: carry it with somebody, or allow more");
    }
    return new CutPlan(
        bound,
        (int) stocks.stream().filter(s -> !s.offcut()).count(),
        stocks.stream().mapToDouble(Stock::price).sum(),
        sheets,
        sequence.settings(),
        offcuts,
        cautions,
        List.of(),
        interrupted);
  }
}
