package sawstead.layout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * A person with a table saw, a guided saw and only so much strength, who makes every cut of a plan
 * in its order. Written apart from the planner: fence cuts come out as wide as the fence is set,
 * not as the plan says, so that wrong settings show up in the finished sizes.
 *
 * <p>Rules are common practice, no source: against the fence only by an edge that is long enough
 * and at least as long as the piece is wide; nothing too long, wide or heavy at the table saw;
 * nothing too narrow between fence and blade; a rail needs something to rest on, and what lies
 * under it must at least be clamped.
 */
public final class SimulatedOperator {
  /** Finished sizes are right within this, mm. */
  private static final double FINISHED = 0.1;

  private static final double SAME = 0.01;

  private final CutRequest request;
  private final CutPlan plan;
  private final List<String> refusals = new ArrayList<>();
  private final List<Held> pile = new ArrayList<>();

  /** Sheets that were brought home. */
  private final Set<Integer> atHome = new HashSet<>();

  /** Something on the pile: where it was on its sheet. */
  private record Held(int sheet, double x0, double y0, double x1, double y1) {
    double length() {
      return x1 - x0;
    }

    double width() {
      return y1 - y0;
    }
  }

  private record Numbered(int sheet, Cut cut) {}

  private SimulatedOperator(CutRequest request, CutPlan plan) {
    this.request = request;
    this.plan = plan;
  }

  /**
   * What the operator refuses to do or finds wrong at the end, in words; empty when all is well.
   */
  public static List<String> refusals(CutRequest request, CutPlan plan) {
    SimulatedOperator operator = new SimulatedOperator(request, plan);
    operator.work();
    return List.copyOf(operator.refusals);
  }

  private void work() {
    for (int i = 0; i < plan.sheets().size(); i++) {
      SheetPlan sheet = plan.sheets().get(i);
      pile.add(new Held(i, 0, 0, sheet.length(), sheet.width()));
    }
    IntStream.range(0, plan.sheets().size())
        .boxed()
        .flatMap(i -> plan.sheets().get(i).cuts().stream().map(cut -> new Numbered(i, cut)))
        .sorted(Comparator.comparingInt(numbered -> numbered.cut().order()))
        .forEach(this::make);
    for (int i = 0; i < plan.sheets().size(); i++) {
      for (PlacedPiece piece : plan.sheets().get(i).pieces()) {
        measure(i, piece);
      }
    }
  }

  private void measure(int sheet, PlacedPiece piece) {
    boolean there =
        pile.removeIf(
            held ->
                held.sheet() == sheet
                    && Math.abs(held.x0() - piece.x()) < FINISHED
                    && Math.abs(held.y0() - piece.y()) < FINISHED
                    && Math.abs(held.length() - piece.length()) <= FINISHED
                    && Math.abs(held.width() - piece.width()) <= FINISHED);
    if (!there) {
      refusals.add(piece.part() + " did not come off sheet " + (sheet + 1) + " in its size");
    }
  }

  private void make(Numbered numbered) {
    Cut cut = numbered.cut();
    for (Held held : List.copyOf(pile)) {
      if (held.sheet() == numbered.sheet() && runsThrough(cut, held)) {
        pile.remove(held);
        cut(cut, held);
        return;
      }
    }
    refusals.add("cut " + cut.order() + ": there is no such piece");
  }

  private boolean runsThrough(Cut cut, Held held) {
    boolean lengthwise = cut.along() == Direction.LENGTH;
    double from = lengthwise ? held.x0() : held.y0();
    double to = lengthwise ? held.x1() : held.y1();
    double low = lengthwise ? held.y0() : held.x0();
    double high = lengthwise ? held.y1() : held.x1();
    return Math.abs(from - cut.from()) < SAME
        && Math.abs(to - cut.to()) < SAME
        && cut.at() < high - SAME
        && cut.at() + request.kerfs().of(cut.guide().tool()) > low + SAME;
  }

  private void cut(Cut cut, Held held) {
    if (cut.guide() != Guide.SELLER && atHome.add(held.sheet())) {
      carry(held);
    }
    boolean lengthwise = cut.along() == Direction.LENGTH;
    double edge = lengthwise ? held.length() : held.width();
    double wide = lengthwise ? held.width() : held.length();
    double kerf = request.kerfs().of(cut.guide().tool());
    double near = cut.at() - (lengthwise ? held.y0() : held.x0());
    switch (cut.guide()) {
      case SELLER -> seller(cut, held, near, wide - near - kerf);
      case RAIL -> rail(cut, near, wide - near - kerf, request.limits().rest());
      case PACKED_RAIL -> rail(cut, near, wide - near - kerf, request.limits().clamped());
      case FENCE -> {
        table(cut, held, edge);
        near = fence(cut, edge, wide, near, kerf);
      }
      case SLED -> {
        table(cut, held, edge);
        sled(cut, edge, wide);
        near = cut.setting().orElse(Double.NaN);
      }
    }
    double low = lengthwise ? held.y0() : held.x0();
    double high = lengthwise ? held.y1() : held.x1();
    keep(held, lengthwise, low, low + near);
    keep(held, lengthwise, low + near + kerf, high);
  }

  private void keep(Held held, boolean lengthwise, double low, double high) {
    if (high - low > SAME) {
      pile.add(
          lengthwise
              ? new Held(held.sheet(), held.x0(), low, held.x1(), high)
              : new Held(held.sheet(), low, held.y0(), high, held.y1()));
    }
  }

  private void refuse(Cut cut, String why) {
    refusals.add("cut " + cut.order() + " (" + cut.guide().name() + "): " + why);
  }

  /** Carries home what the seller made of a sheet, whose first piece is just being cut. */
  private void carry(Held first) {
    Stock stock = stock(first.sheet());
    if (request.carry().isEmpty() || stock.offcut()) {
      return;
    }
    Carry carry = request.carry().get();
    List<Held> all = new ArrayList<>(pile);
    all.add(first);
    for (Held held : all) {
      boolean same = held.sheet() == first.sheet();
      if (same
          && (Math.max(held.length(), held.width()) > carry.longest() + SAME
              || Math.min(held.length(), held.width()) > carry.widest() + SAME
              || mass(held) > carry.heaviest() + 1e-6)) {
        refusals.add("nobody carries home " + held);
      }
    }
  }

  private Stock stock(int sheet) {
    String name = plan.sheets().get(sheet).stock();
    return request.stock().stream().filter(s -> s.name().equals(name)).findFirst().orElseThrow();
  }

  private double mass(Held held) {
    String board = stock(held.sheet()).board();
    Board material =
        request.boards().stream().filter(b -> b.name().equals(board)).findFirst().orElseThrow();
    return held.length()
        / 1000
        * (held.width() / 1000)
        * (material.thickness() / 1000)
        * material.density();
  }

  /** The seller cuts what was not yet cut at home, and nothing thin. */
  private void seller(Cut cut, Held held, double near, double far) {
    if (atHome.contains(held.sheet())) {
      refuse(cut, "the sheet is at home already");
    }
    if (Math.min(near, far) < request.limits().clamped() - SAME) {
      refuse(cut, "the seller does not cut strips of " + Math.min(near, far) + " mm");
    }
  }

  private void rail(Cut cut, double near, double far, double least) {
    if (Math.max(near, far) < least - SAME) {
      refuse(cut, "the rail has only " + Math.max(near, far) + " mm to rest on");
    }
  }

  private void table(Cut cut, Held held, double edge) {
    SawLimits limits = request.limits();
    if (edge > limits.infeed() + SAME) {
      refuse(cut, "there is no room before the saw for " + edge + " mm");
    }
    if (edge > limits.outfeed() + SAME) {
      refuse(cut, "there is no room behind the saw for " + edge + " mm");
    }
    if (Math.max(held.length(), held.width()) > limits.longest() + SAME
        || Math.min(held.length(), held.width()) > limits.widest() + SAME) {
      refuse(cut, "too large for the table saw: " + held);
    }
    double mass = mass(held);
    if (mass > limits.heaviest() + 1e-6) {
      refuse(cut, "too heavy for the table saw: " + mass + " kg");
    }
  }

  /** Sets the fence, runs the piece along it, and returns how wide the near part comes out. */
  private double fence(Cut cut, double edge, double wide, double near, double kerf) {
    SawLimits limits = request.limits();
    double setting = cut.setting().orElse(Double.NaN);
    if (edge < limits.shortestFenceEdge() - SAME) {
      refuse(cut, "an edge of " + edge + " mm is too short for the fence");
    }
    if (edge < wide - SAME) {
      refuse(cut, "the piece is wider (" + wide + " mm) than its edge at the fence is long");
    }
    if (!(setting >= limits.narrowestAtFence() - SAME)) {
      refuse(cut, "only " + setting + " mm between fence and blade");
    }
    if (!(setting <= limits.ripCapacity() + SAME)) {
      refuse(cut, "the fence does not go out to " + setting + " mm");
    }
    boolean nearAtFence = Math.abs(setting - near) <= FINISHED;
    boolean farAtFence = Math.abs(setting - (wide - near - kerf)) <= FINISHED;
    if (!nearAtFence && !farAtFence) {
      refuse(cut, "a fence at " + setting + " mm gives neither part");
    }
    return nearAtFence ? setting : wide - setting - kerf;
  }

  private void sled(Cut cut, double edge, double wide) {
    SawLimits limits = request.limits();
    if (edge > limits.sledCapacity() + SAME) {
      refuse(cut, "the sled cannot cut " + edge + " mm");
    }
    if (!(cut.setting().orElse(Double.NaN) <= limits.farthestStop() + SAME)) {
      refuse(cut, "the stop does not go out to " + cut.setting().orElse(Double.NaN) + " mm");
    }
    if (Math.max(edge, wide) < limits.shortestHeld() - SAME) {
      refuse(cut, "a piece of " + edge + " x " + wide + " mm cannot be held");
    }
  }
}
