package sawstead.assembly;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import sawstead.joinery.Fastener;
import sawstead.station.Contact;
import sawstead.station.Part;
import sawstead.station.PartKind;
import sawstead.station.Step;

/**
 * Sorts the things of a station into groups: those of each told step, a hinge with what it is
 * screwed to last, then the user's own panels and at last what stands or hangs in the station, each
 * for itself. The order is the one in which the units tell; whether it works is not asked here.
 */
final class Groups {
  private final Stage stage;
  private final List<List<Integer>> told = new ArrayList<>();
  private final BitSet named = new BitSet();
  private final List<BitSet> holds = new ArrayList<>();

  private Groups(Stage stage) {
    this.stage = stage;
    for (Step step : stage.station().steps()) {
      List<Integer> things = new ArrayList<>();
      for (String id : step.places()) {
        if (stage.has(id) && !named.get(stage.of(id))) {
          named.set(stage.of(id));
          things.add(stage.of(id));
        }
      }
      told.add(things);
    }
    stage.things().forEach(t -> holds.add(new BitSet()));
    for (int f = 0; f < stage.fasteners().size(); f++) {
      for (int a : stage.joins(f)) {
        for (int b : stage.joins(f)) {
          holds.get(a).set(b);
        }
      }
    }
    for (Contact contact : stage.station().contacts()) {
      if (isPanel(contact.a()) && isPanel(contact.b())) {
        holds.get(stage.of(contact.a())).set(stage.of(contact.b()));
        holds.get(stage.of(contact.b())).set(stage.of(contact.a()));
      }
    }
  }

  private boolean isPanel(String id) {
    return stage.station().part(id).filter(p -> p.kind() == PartKind.PANEL).isPresent();
  }

  static Groups of(Stage stage) {
    return new Groups(stage);
  }

  /** The groups in the order in which they are told. */
  List<Group> inOrder() {
    for (int i = 0; i < stage.things().size(); i++) {
      if (!named.get(i) && !stage.thing(i).isEnvelope()) {
        joinLast(i);
      }
    }
    List<Group> groups = new ArrayList<>();
    List<Step> steps = stage.station().steps();
    for (int s = 0; s < steps.size(); s++) {
      if (!told.get(s).isEmpty()) {
        groups.add(new Group(nameOf(told.get(s)), told.get(s), Optional.of(steps.get(s))));
      }
    }
    for (boolean envelope : new boolean[] {false, true}) {
      for (int i = 0; i < stage.things().size(); i++) {
        if (!named.get(i) && stage.thing(i).isEnvelope() == envelope) {
          groups.add(new Group(stage.thing(i).name(), List.of(i), Optional.empty()));
        }
      }
    }
    return groups;
  }

  /** Puts a bought thing that no step names to the last of the groups that it is screwed to. */
  private void joinLast(int thing) {
    for (int s = told.size() - 1; s >= 0; s--) {
      if (told.get(s).stream().anyMatch(t -> isScrewed(thing, t))) {
        told.get(s).add(thing);
        named.set(thing);
        return;
      }
    }
  }

  private boolean isScrewed(int thing, int other) {
    for (Fastener fastener : stage.fasteners()) {
      List<String> joins = fastener.joins();
      if (joins.stream().anyMatch(id -> stage.has(id) && stage.of(id) == thing)
          && joins.stream().anyMatch(id -> stage.has(id) && stage.of(id) == other)
          && thing != other) {
        return true;
      }
    }
    return false;
  }

  private String nameOf(List<Integer> things) {
    String first = stage.thing(things.get(0)).name();
    String unit = Part.unit(first);
    boolean leg = first.startsWith("stand/leg-");
    if (things.size() == 1) {
      return first;
    }
    return leg ? first.substring(0, "stand/leg-1".length()) : unit;
  }

  /** How many parts of a set hang together, those that nothing holds left out. */
  int count(BitSet set) {
    BitSet held = new BitSet();
    set.stream().filter(t -> holds.get(t).cardinality() > 1).forEach(held::set);
    return components(held, held.stream().boxed().toList()).size();
  }

  /** The parts of a set that are held together by screws or glue, in the order of the list. */
  List<BitSet> components(BitSet set, List<Integer> order) {
    List<BitSet> found = new ArrayList<>();
    BitSet left = (BitSet) set.clone();
    for (int start : order) {
      if (!left.get(start)) {
        continue;
      }
      BitSet component = new BitSet();
      Deque<Integer> open = new ArrayDeque<>(List.of(start));
      left.clear(start);
      while (!open.isEmpty()) {
        int thing = open.pop();
        component.set(thing);
        BitSet next = (BitSet) holds.get(thing).clone();
        next.and(left);
        next.stream().forEach(open::push);
        left.andNot(next);
      }
      found.add(component);
    }
    return found;
  }
}
