package sawstead.layout.shop;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import sawstead.layout.Cut;
import sawstead.layout.CutPlan;
import sawstead.layout.CutRequest;
import sawstead.layout.Direction;
import sawstead.layout.Offcut;
import sawstead.layout.PlacedPiece;
import sawstead.layout.SheetPlan;

/**
 * Replays the cuts and names what comes off: finished panels by their ids, what is cut again by the
 * sheet's number and a letter in the order in which it appears ({@code 1a}, {@code 1b} ... {@code
 * 1z}, {@code 1aa}).
 */
final class ShopWork {
  /** Two coordinates nearer than this are one, mm: the planner's hair. */
  private static final double SAME = 0.06;

  /** Nearer to a panel than this a cut is no rough one, mm. */
  private static final double CLOSE = 1.5;

  private record Numbered(int sheet, Cut cut) {}

  private final CutRequest request;
  private final CutPlan plan;
  private final Map<Integer, List<CutPiece>> pile = new HashMap<>();
  private final Map<Integer, Integer> names = new HashMap<>();

  private ShopWork(CutRequest request, CutPlan plan) {
    this.request = request;
    this.plan = plan;
  }

  static List<ShopStep> steps(CutRequest request, CutPlan plan) {
    return new ShopWork(request, plan).replay();
  }

  private List<ShopStep> replay() {
    List<Numbered> cuts = new ArrayList<>();
    for (int i = 0; i < plan.sheets().size(); i++) {
      SheetPlan sheet = plan.sheets().get(i);
      int number = i + 1;
      pile.put(number, new ArrayList<>());
      pile.get(number)
          .add(
              new CutPiece(
                  CutPiece.Kind.WORK, "sheet " + number, 0, 0, sheet.length(), sheet.width()));
      sheet.cuts().forEach(cut -> cuts.add(new Numbered(number, cut)));
    }
    cuts.sort(Comparator.comparingInt(numbered -> numbered.cut().order()));
    return cuts.stream().map(this::step).toList();
  }

  private ShopStep step(Numbered numbered) {
    Cut cut = numbered.cut();
    double kerf = request.kerfs().of(cut.guide().tool());
    List<CutPiece> lying = pile.get(numbered.sheet());
    CutPiece work =
        lying.stream()
            .filter(y -> y.kind() == CutPiece.Kind.WORK && runsThrough(cut, kerf, y))
            .findFirst()
            .orElseThrow(
                () -> new IllegalStateException("cut " + cut.order() + " goes through nothing"));
    lying.remove(work);
    boolean lengthwise = cut.along() == Direction.LENGTH;
    double low = lengthwise ? work.y() : work.x();
    double high = low + (lengthwise ? work.width() : work.length());
    CutPiece near = side(numbered, work, low, cut.at());
    CutPiece far = side(numbered, work, cut.at() + kerf, high);
    lying.add(near);
    lying.add(far);
    boolean rough = !givesSize(numbered.sheet(), cut, kerf, high);
    return new ShopStep(numbered.sheet(), cut, kerf, work, near, far, rough);
  }

  /**
   * Whether a panel ends at the cut; or begins there and reaches to where the work ends, so that it
   * is what the cut leaves of the work.
   */
  private boolean givesSize(int sheet, Cut cut, double kerf, double high) {
    for (PlacedPiece piece : plan.sheets().get(sheet - 1).pieces()) {
      boolean lengthwise = cut.along() == Direction.LENGTH;
      double from = lengthwise ? piece.x() : piece.y();
      double to = from + (lengthwise ? piece.length() : piece.width());
      double low = lengthwise ? piece.y() : piece.x();
      double end = low + (lengthwise ? piece.width() : piece.length());
      boolean beside = from < cut.to() - SAME && to > cut.from() + SAME;
      boolean isRest = Math.abs(low - cut.at() - kerf) < SAME && Math.abs(end - high) < CLOSE;
      if (beside && (Math.abs(end - cut.at()) < CLOSE || isRest)) {
        return true;
      }
    }
    return false;
  }

  private static boolean runsThrough(Cut cut, double kerf, CutPiece y) {
    boolean lengthwise = cut.along() == Direction.LENGTH;
    double from = lengthwise ? y.x() : y.y();
    double to = from + (lengthwise ? y.length() : y.width());
    double low = lengthwise ? y.y() : y.x();
    double high = low + (lengthwise ? y.width() : y.length());
    return Math.abs(cut.from() - from) < SAME
        && Math.abs(cut.to() - to) < SAME
        && cut.at() + kerf > low
        && cut.at() < high;
  }

  private CutPiece side(Numbered numbered, CutPiece work, double from, double to) {
    int sheet = numbered.sheet();
    boolean lengthwise = numbered.cut().along() == Direction.LENGTH;
    double size = Math.max(0, to - from);
    double x = lengthwise ? work.x() : from;
    double y = lengthwise ? from : work.y();
    double length = lengthwise ? work.length() : size;
    double width = lengthwise ? size : work.width();
    if (size < SAME) {
      return new CutPiece(CutPiece.Kind.WASTE, "", x, y, length, width);
    }
    SheetPlan planned = plan.sheets().get(sheet - 1);
    for (PlacedPiece piece : planned.pieces()) {
      if (same(piece.x(), piece.y(), piece.length(), piece.width(), x, y, length, width)) {
        return new CutPiece(CutPiece.Kind.PART, piece.part(), x, y, length, width);
      }
    }
    for (Offcut offcut : plan.offcuts()) {
      if (offcut.sheet() == sheet
          && same(offcut.x(), offcut.y(), offcut.length(), offcut.width(), x, y, length, width)) {
        return new CutPiece(CutPiece.Kind.OFFCUT, "", x, y, length, width);
      }
    }
    CutPiece waste = new CutPiece(CutPiece.Kind.WASTE, "", x, y, length, width);
    // Also a leftover is work where the seller cuts it, so that it can be carried.
    return isCutAgain(numbered, waste)
        ? new CutPiece(CutPiece.Kind.WORK, sheet + letter(sheet), x, y, length, width)
        : waste;
  }

  private boolean isCutAgain(Numbered numbered, CutPiece piece) {
    return plan.sheets().get(numbered.sheet() - 1).cuts().stream()
        .filter(cut -> cut.order() > numbered.cut().order())
        .anyMatch(cut -> runsThrough(cut, request.kerfs().of(cut.guide().tool()), piece));
  }

  private static boolean same(
      double x, double y, double l, double w, double atX, double atY, double length, double width) {
    return Math.abs(x - atX) < SAME
        && Math.abs(y - atY) < SAME
        && Math.abs(l - length) < SAME
        && Math.abs(w - width) < SAME;
  }

  private String letter(int sheet) {
    int count = names.merge(sheet, 1, Integer::sum) - 1;
    String letter = "";
    for (int rest = count; rest >= 0; rest = rest / 26 - 1) {
      letter = (char) ('a' + rest % 26) + letter;
    }
    return letter;
  }
}
