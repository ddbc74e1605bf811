package sawstead.layout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Looks at a finished plan from outside: it saws every sheet apart as the cuts say and compares
 * what comes off with what was asked for. Written apart from the planner; shares no arithmetic with
 * it. Certified: a plan without faults can be cut, up to {@link #EXACT}.
 */
public final class PlanCheck {
  /** Two coordinates nearer than this are one, mm. Steps of the planner are a micrometre. */
  private static final double EXACT = 0.0015;

  /** A piece may be left too large by this, mm: nobody saws off a twentieth. */
  private static final double HAIR = 0.05;

  private final CutRequest request;
  private final CutPlan plan;
  private final List<String> faults = new ArrayList<>();

  /** What is still in one piece while sawing. */
  private record Rest(double x0, double y0, double x1, double y1) {}

  private PlanCheck(CutRequest request, CutPlan plan) {
    this.request = request;
    this.plan = plan;
  }

  /** All faults of the plan, in words; empty when there is none. */
  public static List<String> faults(CutRequest request, CutPlan plan) {
    PlanCheck check = new PlanCheck(request, plan);
    for (int i = 0; i < plan.sheets().size(); i++) {
      check.sheet(i + 1, plan.sheets().get(i));
    }
    check.demand();
    check.supply();
    check.orders();
    return List.copyOf(check.faults);
  }

  private void sheet(int number, SheetPlan sheet) {
    String name = "sheet " + number;
    Stock stock =
        request.stock().stream()
            .filter(s -> s.name().equals(sheet.stock()))
            .findFirst()
            .orElse(null);
    if (stock == null) {
      faults.add(name + " is of unknown stock " + sheet.stock());
      return;
    }
    if (Math.abs(stock.length() - sheet.length()) > EXACT
        || Math.abs(stock.width() - sheet.width()) > EXACT) {
      faults.add(name + " is not of the size of " + stock.name());
    }
    for (PlacedPiece piece : sheet.pieces()) {
      inside(name, stock, piece);
    }
    apart(name, sheet.pieces());
    saw(name, sheet);
  }

  private void inside(String name, Stock stock, PlacedPiece piece) {
    boolean in =
        piece.x() >= stock.edge() - EXACT
            && piece.y() >= stock.edge() - EXACT
            && piece.x() + piece.length() <= stock.length() - stock.edge() + EXACT
            && piece.y() + piece.width() <= stock.width() - stock.edge() + EXACT;
    if (!in) {
      faults.add(piece.part() + " reaches into the trim of " + name);
    }
    for (Defect d : stock.defects()) {
      boolean beside =
          piece.x() >= d.x() + d.length() - EXACT || piece.x() + piece.length() <= d.x() + EXACT;
      boolean above =
          piece.y() >= d.y() + d.width() - EXACT || piece.y() + piece.width() <= d.y() + EXACT;
      if (!beside && !above) {
        faults.add(piece.part() + " has a defect of " + name);
      }
    }
  }

  /** Any two pieces are a kerf apart, in length or in width. */
  private void apart(String name, List<PlacedPiece> pieces) {
    double kerf = Math.min(request.kerfs().guided(), request.kerfs().table());
    for (int i = 0; i < pieces.size(); i++) {
      for (int j = i + 1; j < pieces.size(); j++) {
        PlacedPiece a = pieces.get(i);
        PlacedPiece b = pieces.get(j);
        double gapX = Math.max(b.x() - a.x() - a.length(), a.x() - b.x() - b.length());
        double gapY = Math.max(b.y() - a.y() - a.width(), a.y() - b.y() - b.width());
        if (Math.max(gapX, gapY) < kerf - EXACT) {
          faults.add(a.part() + " and " + b.part() + " are too near on " + name);
        }
      }
    }
  }

  private void saw(String name, SheetPlan sheet) {
    List<Rest> rests = new ArrayList<>();
    rests.add(new Rest(0, 0, sheet.length(), sheet.width()));
    List<Cut> cuts = new ArrayList<>(sheet.cuts());
    cuts.sort(Comparator.comparingInt(Cut::order));
    for (Cut cut : cuts) {
      cut(name, cut, rests);
    }
    List<Rest> left = new ArrayList<>(rests);
    for (PlacedPiece piece : sheet.pieces()) {
      if (!left.removeIf(rest -> same(rest, piece))) {
        faults.add("no cut frees " + piece.part() + " on " + name);
      }
    }
  }

  private static boolean same(Rest rest, PlacedPiece piece) {
    return near(rest.x0(), piece.x())
        && near(rest.y0(), piece.y())
        && hair(rest.x1() - piece.x() - piece.length())
        && hair(rest.y1() - piece.y() - piece.width());
  }

  private static boolean hair(double excess) {
    return excess >= -EXACT && excess <= HAIR + EXACT;
  }

  private static boolean near(double a, double b) {
    return Math.abs(a - b) <= EXACT;
  }

  /** The cut must run through exactly one rest, from edge to edge. */
  private void cut(String name, Cut cut, List<Rest> rests) {
    double kerf = request.kerfs().of(cut.guide().tool());
    double end = cut.at() + kerf;
    for (int i = 0; i < rests.size(); i++) {
      Rest rest = rests.get(i);
      boolean alongX = cut.along() == Direction.LENGTH;
      double runsFrom = alongX ? rest.x0() : rest.y0();
      double runsTo = alongX ? rest.x1() : rest.y1();
      double low = alongX ? rest.y0() : rest.x0();
      double high = alongX ? rest.y1() : rest.x1();
      if (near(runsFrom, cut.from())
          && near(runsTo, cut.to())
          && end > low + EXACT
          && cut.at() < high - EXACT) {
        rests.remove(i);
        if (cut.at() > low + EXACT) {
          rests.add(part(rest, alongX, low, cut.at()));
        }
        if (end < high - EXACT) {
          rests.add(part(rest, alongX, end, high));
        }
        return;
      }
    }
    faults.add("cut " + cut.order() + " on " + name + " does not run from edge to edge");
  }

  private static Rest part(Rest rest, boolean alongX, double low, double high) {
    return alongX
        ? new Rest(rest.x0(), low, rest.x1(), high)
        : new Rest(low, rest.y0(), high, rest.y1());
  }

  /** Every copy of every part exactly once, in its size, with its grain, from its board. */
  private void demand() {
    Map<Part, Integer> missing = new HashMap<>();
    request.parts().forEach(part -> missing.merge(part, part.quantity(), Integer::sum));
    for (SheetPlan sheet : plan.sheets()) {
      for (PlacedPiece piece : sheet.pieces()) {
        Part part =
            missing.keySet().stream()
                .filter(p -> missing.get(p) > 0 && answers(p, piece, sheet))
                .findFirst()
                .orElse(null);
        if (part == null) {
          faults.add("nobody asked for " + piece);
        } else {
          missing.merge(part, -1, Integer::sum);
        }
      }
    }
    missing.forEach(
        (part, n) -> {
          if (n > 0) {
            faults.add(n + " of part " + part.name() + " are missing");
          }
        });
  }

  private boolean answers(Part part, PlacedPiece piece, SheetPlan sheet) {
    boolean turnedWell =
        part.grain() == Grain.FREE || piece.turned() == (part.grain() == Grain.ACROSS);
    double length = piece.turned() ? piece.width() : piece.length();
    double width = piece.turned() ? piece.length() : piece.width();
    return part.name().equals(piece.part())
        && turnedWell
        && near(length, part.length())
        && near(width, part.width())
        && request.stock().stream()
            .anyMatch(s -> s.name().equals(sheet.stock()) && s.board().equals(part.board()));
  }

  private void supply() {
    for (Stock stock : request.stock()) {
      long used = plan.sheets().stream().filter(s -> s.stock().equals(stock.name())).count();
      if (used > stock.quantity()) {
        faults.add("there are not " + used + " of stock " + stock.name());
      }
    }
  }

  /** Cuts are numbered 1, 2, 3 ... over the whole plan. */
  private void orders() {
    int[] orders =
        plan.sheets().stream()
            .flatMap(s -> s.cuts().stream())
            .mapToInt(Cut::order)
            .sorted()
            .toArray();
    for (int i = 0; i < orders.length; i++) {
      if (orders[i] != i + 1) {
        faults.add("cut number " + (i + 1) + " is missing or given twice");
        return;
      }
    }
  }
}
