package sawstead.layout;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.SplittableRandom;

/**
 * Brings the cuts of all sheets into one order: first the seller's; then what is cut along the
 * rail, sheet by sheet; then the table saw, one setting after another, each used for all pieces
 * that wait for it from all sheets. A setting that nothing will want again later is always taken up
 * first, which can never cost one; where there is none, several choices are tried from the start
 * and the order with the fewest settings is kept; heuristic.
 */
final class Sequence {
  /** Orders tried. */
  private static final int TRIALS = 40;

  /** A setting of the table saw. */
  private record Setting(Guide guide, int steps) {}

  /** A cut waiting for its turn. */
  private record Waiting(int sheet, SawNode.Sawn node) {}

  private final List<List<Cut>> cuts = new ArrayList<>();
  private final Map<Setting, List<Waiting>> atTable = new LinkedHashMap<>();
  private final Map<Setting, Integer> toCome = new HashMap<>();
  private final Deque<Waiting> atRail = new ArrayDeque<>();
  private final Deque<Waiting> atSeller = new ArrayDeque<>();
  private final SplittableRandom random;
  private final boolean first;
  private int order;
  private int settings;
  private int marked;

  private Sequence(int trial) {
    first = trial == 0;
    random = new SplittableRandom(trial);
  }

  /** Orders the cuts of the given sheets. */
  static Sequence of(List<SawNode> sheets) {
    Sequence best = trial(sheets, 0);
    for (int trial = 1; trial < TRIALS; trial++) {
      Sequence other = trial(sheets, trial);
      best = other.settings < best.settings ? other : best;
    }
    return best;
  }

  /** One order, good but not the best of several. */
  static Sequence quick(List<SawNode> sheets) {
    return trial(sheets, 0);
  }

  private static Sequence trial(List<SawNode> sheets, int trial) {
    Sequence sequence = new Sequence(trial);
    for (SawNode sheet : sheets) {
      sequence.cuts.add(new ArrayList<>());
      sequence.count(sheet);
    }
    List<List<Waiting>> home = new ArrayList<>();
    for (int i = 0; i < sheets.size(); i++) {
      sequence.free(i, sheets.get(i));
      sequence.sellerCuts();
      home.add(List.copyOf(sequence.atRail));
      sequence.atRail.clear();
    }
    for (List<Waiting> sheet : home) {
      sequence.atRail.addAll(sheet);
      sequence.railCuts();
    }
    sequence.tableCuts();
    return sequence;
  }

  /** Cuts of each sheet, by order. */
  List<List<Cut>> cuts() {
    return cuts;
  }

  /** How often fence or stop is set. */
  int settings() {
    return settings;
  }

  /** How many cuts run along the rail, each of them marked. */
  int marked() {
    return marked;
  }

  /** How many cuts there are. */
  int made() {
    return order;
  }

  private static Setting setting(SawNode.Sawn node) {
    return new Setting(node.how().guide(), node.how().setting());
  }

  private void count(SawNode node) {
    if (node instanceof SawNode.Sawn sawn) {
      toCome.merge(setting(sawn), 1, Integer::sum);
      count(sawn.near());
      count(sawn.far());
    }
  }

  private void free(int sheet, SawNode node) {
    if (node instanceof SawNode.Sawn sawn) {
      Waiting waiting = new Waiting(sheet, sawn);
      switch (sawn.how().guide().tool()) {
        case SELLER -> atSeller.addLast(waiting);
        case GUIDED -> atRail.addLast(waiting);
        case TABLE -> {
          atTable.computeIfAbsent(setting(sawn), s -> new ArrayList<>()).add(waiting);
          toCome.merge(setting(sawn), -1, Integer::sum);
        }
      }
    }
  }

  private void sellerCuts() {
    while (!atSeller.isEmpty()) {
      make(atSeller.removeFirst());
    }
  }

  private void railCuts() {
    while (!atRail.isEmpty()) {
      make(atRail.removeFirst());
    }
  }

  private void tableCuts() {
    while (!atTable.isEmpty()) {
      Setting next = next();
      settings++;
      List<Waiting> now = atTable.remove(next);
      while (now != null) {
        now.forEach(this::make);
        railCuts();
        now = atTable.remove(next);
      }
    }
  }

  private Setting next() {
    Setting best = null;
    for (Setting candidate : atTable.keySet()) {
      best = best == null || before(candidate, best) ? candidate : best;
    }
    if (first || toCome.get(best) == 0) {
      return best;
    }
    List<Setting> waiting = new ArrayList<>(atTable.keySet());
    return waiting.get(random.nextInt(waiting.size()));
  }

  private boolean before(Setting a, Setting b) {
    int later = Integer.compare(toCome.get(a), toCome.get(b));
    if (later != 0) {
      return later < 0;
    }
    int waiting = Integer.compare(atTable.get(b).size(), atTable.get(a).size());
    if (waiting != 0) {
      return waiting < 0;
    }
    return a.steps() != b.steps() ? a.steps() > b.steps() : a.guide().compareTo(b.guide()) < 0;
  }

  private void make(Waiting waiting) {
    SawNode.Sawn node = waiting.node();
    Region region = node.region();
    Tool tool = node.how().guide().tool();
    OptionalDouble setting =
        tool == Tool.TABLE
            ? OptionalDouble.of(Steps.mm(node.how().setting()))
            : OptionalDouble.empty();
    marked += tool == Tool.GUIDED ? 1 : 0;
    cuts.get(waiting.sheet())
        .add(
            new Cut(
                ++order,
                node.how().guide(),
                node.along(),
                Steps.mm(node.at()),
                Steps.mm(region.near(node.along())),
                Steps.mm(region.far(node.along())),
                setting));
    free(waiting.sheet(), node.near());
    free(waiting.sheet(), node.far());
  }
}
