package sawstead.layout.shop;

import java.util.List;
import sawstead.brief.GoodSide;
import sawstead.check.Report;
import sawstead.check.Words;
import sawstead.layout.CutPlan;
import sawstead.layout.CutPlanner;
import sawstead.layout.CutRequest;
import sawstead.layout.CutRequestException;
import sawstead.layout.Defect;
import sawstead.layout.Effort;
import sawstead.layout.Favour;
import sawstead.layout.Stock;
import sawstead.layout.packing.Watch;
import sawstead.station.Station;

/**
 * How the sheets of a brief become the panels of its station.
 *
 * @param station whose panels are cut
 * @param forbidden whether a finding forbids cutting this station
 * @param request what was asked of the planner
 * @param plan what it answered
 * @param steps every cut, by order, with the names of what comes off
 */
public record Breakdown(
    Station station, boolean forbidden, CutRequest request, CutPlan plan, List<ShopStep> steps) {
  public Breakdown {
    steps = List.copyOf(steps);
  }

  /**
   * Plans the cuts of a station.
   *
   * @param watch looks on and may end the search early
   * @throws CutRequestException when the panels cannot come from these sheets, with all complaints
   */
  public static Breakdown of(Report report, Effort effort, Watch watch) throws CutRequestException {
    return of(report.station(), report.forbidsCutting(), effort, watch);
  }

  /** The same for a station that has been judged elsewhere. */
  static Breakdown of(Station station, boolean forbidden, Effort effort, Watch watch)
      throws CutRequestException {
    CutRequest request = StationRequest.of(station);
    boolean labour = station.brief().cutting().favoursLabour();
    Effort favouring = labour ? effort.favouring(Favour.LABOUR) : effort;
    CutPlan plan = CutPlanner.plan(request, favouring, watch);
    return new Breakdown(station, forbidden, request, plan, ShopStep.of(request, plan));
  }

  /** Amounts in the user's units. */
  public Words words() {
    return new Words(station.brief().units());
  }

  /** The cuts of one sheet, by order; sheets are numbered from 1. */
  public List<ShopStep> steps(int sheet) {
    return steps.stream().filter(step -> step.sheet() == sheet).toList();
  }

  /** Whether the seller cuts a sheet before it comes home; sheets are numbered from 1. */
  public boolean isCutBySeller(int sheet) {
    return steps.stream().anyMatch(step -> step.sheet() == sheet && step.isSellers());
  }

  /** The stock of that name. */
  Stock stock(String name) {
    return request.stock().stream().filter(s -> s.name().equals(name)).findFirst().orElseThrow();
  }

  /** Which face of the panels of a sheet is the good one; sheets are numbered from 1. */
  public GoodSide good(int sheet) {
    String stock = plan.sheets().get(sheet - 1).stock();
    return CutList.good(station.brief(), board(stock).name());
  }

  /** Places of a stock that no panel may have. */
  public List<Defect> defects(String stock) {
    return stock(stock).defects();
  }

  /** The material that a stock is of. */
  public sawstead.layout.Board board(String stock) {
    String board = stock(stock).board();
    return request.boards().stream().filter(b -> b.name().equals(board)).findFirst().orElseThrow();
  }
}
