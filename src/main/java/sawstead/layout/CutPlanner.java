package sawstead.layout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import sawstead.layout.packing.Budget;
import sawstead.layout.packing.LowerBound;
import sawstead.layout.packing.PackedSheet;
import sawstead.layout.packing.Packing;
import sawstead.layout.packing.PackingSearch;
import sawstead.layout.packing.Watch;

/**
 * Makes the cut plan: fewest new sheets, then lowest cost, then a large offcut in one piece, then
 * few settings and cuts.
 */
public final class CutPlanner {
  /** Both sides of a leftover that is worth keeping, mm; common practice, no source. */
  private static final double WORTH_KEEPING = 100;

  private final CutRequest request;
  private final Effort effort;
  private final Watch watch;
  private final List<SawNode> trees = new ArrayList<>();
  private final List<Stock> stocks = new ArrayList<>();
  private final List<List<PlacedPiece>> pieces = new ArrayList<>();
  private final List<Offcut> offcuts = new ArrayList<>();
  private int unsafe;

  private CutPlanner(CutRequest request, Effort effort, Watch watch) {
    this.request = request;
    this.effort = effort;
    this.watch = watch;
  }

  /**
   * Plans the cuts.
   *
   * @param watch looks on and may end the search early
   * @throws CutRequestException when the request is impossible, with all complaints
   */
  public static CutPlan plan(CutRequest request, Effort effort, Watch watch)
      throws CutRequestException {
    RequestCheck.check(request);
    CutPlan plan = new CutPlanner(request, effort, watch).run();
    List<String> faults = PlanCheck.faults(request, plan);
    if (!faults.isEmpty()) {
      throw new IllegalStateException("the plan failed its own check: " + faults.get(0));
    }
    return plan;
  }

  private CutPlan run() throws CutRequestException {
    List<BoardGroup> groups = new ArrayList<>();
    for (Board board : request.boards()) {
      if (request.parts().stream().anyMatch(part -> part.board().equals(board.name()))) {
        groups.add(new BoardGroup(request, board));
      }
    }
    int all = groups.stream().mapToInt(BoardGroup::pieces).sum();
    int bound = 0;
    boolean interrupted = false;
    for (BoardGroup group : groups) {
      int own = LowerBound.of(group.problem());
      Packing packing = search(group, own, effort.seconds() * group.pieces() / all);
      packing.sheets().forEach(sheet -> add(group, sheet));
      bound += own;
      interrupted |= packing.interrupted();
    }
    return assemble(bound, interrupted);
  }

  private Packing search(BoardGroup group, int bound, double seconds) throws CutRequestException {
    Budget budget = new Budget(seconds, effort.seed(), effort.workers());
    return PackingSearch.search(group.problem(), budget, bound, watch)
        .orElseThrow(
            () -> {
              List<Complaint> complaints = new ArrayList<>();
              RequestCheck.notEnough(complaints, group.board().name());
              return new CutRequestException(complaints);
            });
  }

  private void add(BoardGroup group, PackedSheet sheet) {
    Stock stock = group.stock(sheet.kind());
    CuttingRules rules = new CuttingRules(request.limits(), request.kerfs(), group.board());
    SawNode tree = new Dissection(rules, group.room()).sheet(stock, sheet.tile());
    trees.add(tree);
    stocks.add(stock);
    pieces.add(new ArrayList<>());
    collect(group, tree);
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

  private CutPlan assemble(int bound, boolean interrupted) {
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
    return new CutPlan(
        bound,
        (int) stocks.stream().filter(s -> !s.offcut()).count(),
        stocks.stream().mapToDouble(Stock::price).sum(),
        sheets,
        sequence.settings(),
        offcuts,
        cautions,
        interrupted);
  }
}
