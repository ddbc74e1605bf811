package sawstead.layout;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * Brings the cuts of all sheets into one order: first what is cut along the rail, sheet by sheet;
 * then the table saw, one setting after another, each used for all pieces that wait for it from all
 * sheets. A setting is taken up when as little as possible will want it again later; heuristic.
 */
final class Sequence {
  /** A setting of the table saw. */
  private record Setting(Guide guide, int steps) {}

  /** A cut waiting for its turn. */
  private record Waiting(int sheet, SawNode.Sawn node) {}

  private final List<List<Cut>> cuts = new ArrayList<>();
  private final Map<Setting, List<Waiting>> atTable = new HashMap<>();
  private final Map<Setting, Integer> toCome = new HashMap<>();
  private final Deque<Waiting> atRail = new ArrayDeque<>();
  private int order;
  private int settings;

  private Sequence() {}

  /** Orders the cuts of the given sheets. */
  static Sequence of(List<SawNode> sheets) {
    Sequence sequence = new Sequence();
    for (SawNode sheet : sheets) {
      sequence.cuts.add(new ArrayList<>());
      sequence.count(sheet);
    }
    for (int i = 0; i < sheets.size(); i++) {
      sequence.free(i, sheets.get(i));
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
      if (sawn.how().guide().tool() == Tool.GUIDED) {
        atRail.addLast(waiting);
      } else {
        atTable.computeIfAbsent(setting(sawn), s -> new ArrayList<>()).add(waiting);
        toCome.merge(setting(sawn), -1, Integer::sum);
      }
    }
  }

  private void railCuts() {
    while (!atRail.isEmpty()) {
      make(atRail.removeFirst());
    }
  }

  private void tableCuts() {
    while (!atTable.isEmpty()) {
      Setting next = null;
      for (Setting candidate : atTable.keySet()) {
        next = next == null || before(candidate, next) ? candidate : next;
      }
      settings++;
      List<Waiting> now = atTable.remove(next);
      while (now != null) {
        now.forEach(this::make);
        railCuts();
        now = atTable.remove(next);
      }
    }
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
    OptionalDouble setting =
        node.how().guide().tool() == Tool.GUIDED
            ? OptionalDouble.empty()
            : OptionalDouble.of(Steps.mm(node.how().setting()));
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
