package sawstead.layout;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import sawstead.layout.packing.Budget;
import sawstead.layout.packing.Choices;
import sawstead.layout.packing.LowerBound;
import sawstead.layout.packing.PackedSheet;
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
        groups.add(new BoardGroup(request, board, false));
      }
    }
    int all = groups.stream().mapToInt(BoardGroup::pieces).sum();
    for (int i = 0; i < groups.size(); i++) {
      BoardGroup group = groups.get(i);
      int own = LowerBound.of(group.problem());
      double seconds = effort.seconds() * group.pieces() / all;
      Way way =
          request.carry().isEmpty()
              ? new Way(group, search(group, own, seconds).orElseThrow(() -> notEnough(group)))
              : carried(group, own, seconds);
      groups.set(i, way.group());
      found.add(way.choices());
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
      assembly.add(groups.get(i).fresh(request), packing.sheets());
      interrupted |= packing.interrupted();
    }
    return assembly.plan(bound, interrupted);
  }

  /** A way to pack a group, and the sheets that it means. */
  private record Way(BoardGroup group, Choices choices) {
    int sheets() {
      return choices.leftoverFirst().counted();
    }
  }

  /**
   * Searches one group for the seller's cuts. There are three ways: whole sheets with room left for
   * them, whole sheets as they are, and what the seller makes of the sheets. Fewest sheets come
   * first, then fewest pieces too large to be carried, then fewest cuts for the seller.
   */
  private Way carried(BoardGroup whole, int least, double seconds) throws CutRequestException {
    BoardGroup roomy = new BoardGroup(request, whole.board(), true);
    List<Way> ways = new ArrayList<>();
    for (BoardGroup group : List.of(roomy, whole)) {
      search(group, least, seconds / 3).ifPresent(choices -> ways.add(new Way(group, choices)));
    }
    int fewest = ways.stream().mapToInt(Way::sheets).min().orElseThrow(() -> notEnough(whole));
    CarryPacking.search(request, whole, fewest, budget(seconds / 3), watch)
        .ifPresent(choices -> ways.add(new Way(whole, choices)));
    return Collections.min(
        ways, Comparator.comparingInt(Way::sheets).thenComparingLong(this::troublesome));
  }

  /** Pieces that are not carried, then cuts for the seller, in both plans of a way. */
  private long troublesome(Way way) {
    GroupLabour labour = new GroupLabour(request, way.group());
    long tooLarge = 0;
    long cuts = 0;
    for (Packing packing : List.of(way.choices().leftoverFirst(), way.choices().labourFirst())) {
      for (PackedSheet sheet : packing.sheets()) {
        tooLarge += labour.tooLarge(sheet);
        cuts += labour.sellersCuts(sheet);
      }
    }
    return (tooLarge << 32) + cuts;
  }

  private Optional<Choices> search(BoardGroup group, int least, double seconds) {
    GroupLabour labour = new GroupLabour(request, group);
    return PackingSearch.search(group.problem(), labour, budget(seconds), least, watch);
  }

  private Budget budget(double seconds) {
    return new Budget(seconds, effort.seed(), effort.workers());
  }

  private static CutRequestException notEnough(BoardGroup group) {
    List<Complaint> complaints = new ArrayList<>();
    RequestCheck.notEnough(complaints, group.board().name());
    return new CutRequestException(complaints);
  }
}
