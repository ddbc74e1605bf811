package sawstead.layout.packing;

import java.util.ArrayList;
import java.util.List;

/**
 * Makes the largest leftover larger: the emptiest sheet is taken to be shorter or narrower than it
 * is, and everything has to fit all the same; what was taken away is then left over in one piece,
 * over the whole width or length of the sheet. How much can be taken away is searched by halving,
 * in both directions in turn. Heuristic: never worse than before, seldom provably largest.
 */
final class LeftoverSearch {
  private static final int ATTEMPTS = 8;

  private final PackingProblem problem;
  private final Crew crew;
  private final Patience patience;
  private Load best;

  /** Asked between rounds. */
  interface Patience {
    boolean goOn(Crew crew, Load best);
  }

  LeftoverSearch(PackingProblem problem, Crew crew, Patience patience, Load best) {
    this.problem = problem;
    this.crew = crew;
    this.patience = patience;
    this.best = best;
  }

  /** Works until the given amount of work is used in all; returns a load as good in all else. */
  Load widen(long until) {
    int at = best.mostFree();
    SheetKind sheet = problem.sheets().get(best.sheets[at].kind);
    long largest = best.sheets[at].largestLeftover();
    long room = best.sheets[at].free + (best.free() - best.sheets[at].free) / 2;
    long[] most = {
      Math.min(sheet.length() - 1L, room / sheet.width()),
      Math.min(sheet.width() - 1L, room / sheet.length())
    };
    for (int attempt = 0; attempt < ATTEMPTS; attempt++) {
      boolean alongLength = attempt % 2 == 0;
      int direction = alongLength ? 0 : 1;
      long across = alongLength ? sheet.width() : sheet.length();
      long least = largest / across + 1;
      if (least > most[direction]) {
        continue;
      }
      long strip = (least + most[direction]) / 2;
      long share = crew.used() + (until - crew.used()) / (ATTEMPTS - attempt);
      if (free(at, alongLength, strip, share)) {
        at = best.mostFree();
        largest = Math.max(strip * across, best.sheets[at].largestLeftover());
      } else {
        most[direction] = strip - 1;
      }
      if (!patience.goOn(crew, best)) {
        break;
      }
    }
    return best;
  }

  private boolean free(int at, boolean alongLength, long strip, long until) {
    int kind = best.sheets[at].kind;
    SheetKind sheet = problem.sheets().get(kind);
    SheetKind shorter =
        new SheetKind(
            (int) (sheet.length() - (alongLength ? strip : 0)),
            (int) (sheet.width() - (alongLength ? 0 : strip)),
            1,
            sheet.counted(),
            sheet.price());
    int[] used = new int[problem.sheets().size()];
    for (int i = 0; i < best.count; i++) {
      used[best.sheets[i].kind] += i == at ? 0 : 1;
    }
    List<SheetKind> kinds = new ArrayList<>();
    for (int k = 0; k < used.length; k++) {
      SheetKind own = problem.sheets().get(k);
      kinds.add(own.withSupply(free(own) ? left(own, kind == k) : used[k]));
    }
    kinds.add(shorter);
    if (!PackingProblem.possible(kinds, problem.pieces())) {
      return false;
    }
    PackingProblem shrunk = new PackingProblem(kinds, problem.pieces());
    Goal goal = new Goal(best.counted, best.price);
    Load found =
        crew.reach(shrunk, best.without(at, shrunk), goal, until, () -> patience.goOn(crew, best));
    if (found != null) {
      best = found.widened(problem, kinds.size() - 1, kind);
    }
    return found != null;
  }

  /** Whether one more of it costs nothing: offcuts may take what a sheet then has left over. */
  private static boolean free(SheetKind sheet) {
    return !sheet.counted() && sheet.price() == 0;
  }

  private static int left(SheetKind sheet, boolean oneIsShortened) {
    boolean endless = sheet.supply() == SheetKind.ENDLESS;
    return endless || !oneIsShortened ? sheet.supply() : sheet.supply() - 1;
  }
}
