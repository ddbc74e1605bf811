package sawstead.layout;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import sawstead.layout.packing.Budget;
import sawstead.layout.packing.Choices;
import sawstead.layout.packing.LowerBound;
import sawstead.layout.packing.Packing;
import sawstead.layout.packing.PackingSearch;
import sawstead.layout.packing.Watch;

/**
 * Makes the cut plan: fewest new sheets, then lowest cost, then a large offcut in one piece, then
 * little labour; the last two in turn when labour is favoured. What the other choice would give is
 * told beside the plan.
 */
public final class CutPlanner {
  private final CutRequest request;
  private final Effort effort;
  private final Watch watch;
  private final List<BoardGroup> groups = new ArrayList<>();
  private final List<Choices> found = new ArrayList<>();
  private int bound;

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
    for (Board board : request.boards()) {
      if (request.parts().stream().anyMatch(part -> part.board().equals(board.name()))) {
        groups.add(new BoardGroup(request, board));
      }
    }
    int all = groups.stream().mapToInt(BoardGroup::pieces).sum();
    for (BoardGroup group : groups) {
      int own = LowerBound.of(group.problem());
      found.add(search(group, own, effort.seconds() * group.pieces() / all));
      bound += own;
    }
    CutPlan wasteFirst = assemble(Choices::leftoverFirst);
    CutPlan labourFirst = assemble(Choices::labourFirst);
    List<Choice> choices = new ArrayList<>();
    choices.add(Choice.of(Favour.LEFTOVER, wasteFirst));
    choices.add(Choice.of(Favour.LABOUR, labourFirst));
    boolean labour = effort.favour() == Favour.LABOUR;
    if (labour) {
      Collections.swap(choices, 0, 1);
    }
    oneMore().map(plan -> Choice.of(Favour.ONE_MORE, plan)).ifPresent(choices::add);
    return (labour ? labourFirst : wasteFirst).withChoices(choices);
  }

  /** One more sheet of the board that has the most pieces and gains by it. */
  private Optional<CutPlan> oneMore() {
    int best = -1;
    for (int i = 0; i < groups.size(); i++) {
      boolean more = best < 0 || groups.get(i).pieces() > groups.get(best).pieces();
      best = found.get(i).oneMore().isPresent() && more ? i : best;
    }
    if (best < 0) {
      return Optional.empty();
    }
    Choices wider = found.get(best);
    return Optional.of(
        assemble(
            choices -> choices == wider ? choices.oneMore().orElseThrow() : choices.labourFirst()));
  }

  private CutPlan assemble(Function<Choices, Packing> choice) {
    CutAssembly assembly = new CutAssembly(request);
    boolean interrupted = false;
    for (int i = 0; i < groups.size(); i++) {
      Packing packing = choice.apply(found.get(i));
      assembly.add(new BoardGroup(request, groups.get(i).board()), packing.sheets());
      interrupted |= packing.interrupted();
    }
    return assembly.plan(bound, interrupted);
  }

  private Choices search(BoardGroup group, int least, double seconds) throws CutRequestException {
    Budget budget = new Budget(seconds, effort.seed(), effort.workers());
    GroupLabour labour = new GroupLabour(request, group);
    return PackingSearch.search(group.problem(), labour, budget, least, watch)
        .orElseThrow(
            () -> {
              List<Complaint> complaints = new ArrayList<>();
              RequestCheck.notEnough(complaints, group.board().name());
              return new CutRequestException(complaints);
            });
  }
}
