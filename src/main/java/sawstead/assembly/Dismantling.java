package sawstead.assembly;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import sawstead.solid.Vec;

/**
 * Takes a station, or what lies on a bench, apart. At each turn the group that is told last among
 * those that can come off comes off: whole if it can, else without the fewest of its things, which
 * come off first; at first only so that what is left still hangs together. When none can, single
 * things, then chains of translations, then things that leave only together are tried; then ways
 * without regard to tools. What is left is the proof that no order was found among these groups and
 * motions.
 */
final class Dismantling {
  private static final List<Vec> AXES =
      List.of(
          new Vec(0, 0, 1),
          new Vec(0, -1, 0),
          new Vec(-1, 0, 0),
          new Vec(1, 0, 0),
          new Vec(0, 1, 0),
          new Vec(0, 0, -1));

  private final Stage stage;
  private final Blocking blocking;
  private final Reach reach;
  private final Groups groups;
  private final List<Group> order;
  private final boolean onBench;
  private final BitSet standing;
  private final List<Removal> removals = new ArrayList<>();
  private final Map<Group, Removal.Obstacle> obstacles = new HashMap<>();
  private boolean borrows;
  private boolean steady;

  Dismantling(
      Stage stage,
      Blocking blocking,
      Reach reach,
      Groups groups,
      List<Group> order,
      BitSet standing,
      boolean onBench) {
    this.stage = stage;
    this.blocking = blocking;
    this.reach = reach;
    this.groups = groups;
    this.order = order;
    this.standing = (BitSet) standing.clone();
    this.onBench = onBench;
  }

  /** Takes apart; what was taken off, in that order. */
  List<Removal> run() {
    while (!standing.isEmpty() && (withTools(false) || withTools(true) || bare())) {
      continue;
    }
    return removals;
  }

  /** First with the tools that the user owns, and only if nothing comes off with others. */
  private boolean withTools(boolean borrowed) {
    borrows = borrowed;
    steady = true;
    if (turn() || chains()) {
      return true;
    }
    steady = false;
    return turn() || singles() || chains() || together() || tilted(true);
  }

  /** What could not be taken off; empty when an order was found. */
  BitSet left() {
    return standing;
  }

  private boolean turn() {
    for (int g = order.size() - 1; g >= 0; g--) {
      Group group = order.get(g);
      List<BitSet> parts = groups.components(group.in(standing), group.things());
      Collections.reverse(parts);
      for (BitSet part : parts) {
        List<BitSet> pieces = comeOff(part, group);
        if (!pieces.isEmpty()) {
          pieces.forEach(p -> take(p, group, way(p, group, standing).orElseThrow(), false));
          return true;
        }
        if (!onBench
            && keepsSteady(part, standing)
            && loosens(part, standing)
            && chain(part, group)) {
          return true;
        }
      }
    }
    return false;
  }

  /** The pieces in which a part of a group comes off, in that order; empty when it cannot. */
  private List<BitSet> comeOff(BitSet part, Group group) {
    if (canLeave(part, group, standing)) {
      return List.of(part);
    }
    remember(part, group);
    List<BitSet> peeled = new ArrayList<>();
    BitSet left = (BitSet) part.clone();
    BitSet stands = (BitSet) standing.clone();
    while (left.cardinality() > 1) {
      Optional<BitSet> next = peel(left, group, stands);
      if (next.isEmpty()) {
        return List.of();
      }
      peeled.add(next.get());
      left.andNot(next.get());
      stands.andNot(next.get());
      if (groups.components(left, group.things()).size() == 1 && canLeave(left, group, stands)) {
        return fewest(peeled, part, group);
      }
    }
    return List.of();
  }

  private Optional<BitSet> peel(BitSet left, Group group, BitSet stands) {
    for (int i = group.things().size() - 1; i >= 0; i--) {
      int thing = group.things().get(i);
      if (left.get(thing)) {
        BitSet single = of(thing);
        if (canLeave(single, group, stands)) {
          return Optional.of(single);
        }
      }
    }
    return Optional.empty();
  }

  /** Leaves out of the peeled things those that can stay with the rest. */
  private List<BitSet> fewest(List<BitSet> peeled, BitSet part, Group group) {
    List<BitSet> needed = new ArrayList<>(peeled);
    for (BitSet candidate : peeled) {
      List<BitSet> fewer = new ArrayList<>(needed);
      fewer.remove(candidate);
      if (comesOff(fewer, part, group)) {
        needed = fewer;
      }
    }
    BitSet rest = (BitSet) part.clone();
    needed.forEach(rest::andNot);
    needed.add(rest);
    return needed;
  }

  private boolean comesOff(List<BitSet> peeled, BitSet part, Group group) {
    BitSet rest = (BitSet) part.clone();
    BitSet stands = (BitSet) standing.clone();
    for (BitSet single : peeled) {
      if (!canLeave(single, group, stands)) {
        return false;
      }
      rest.andNot(single);
      stands.andNot(single);
    }
    return groups.components(rest, group.things()).size() == 1 && canLeave(rest, group, stands);
  }

  private boolean singles() {
    for (int g = order.size() - 1; g >= 0; g--) {
      Group group = order.get(g);
      Optional<BitSet> single = peel(group.in(standing), group, standing);
      if (single.isPresent()) {
        take(single.get(), group, way(single.get(), group, standing).orElseThrow(), false);
        return true;
      }
    }
    return false;
  }

  private boolean chains() {
    for (BitSet candidate : candidates()) {
      Group group = groupOf(candidate);
      if (keepsSteady(candidate, standing)
          && loosens(candidate, standing)
          && chain(candidate, group)) {
        return true;
      }
    }
    return false;
  }

  private boolean chain(BitSet candidate, Group group) {
    BitSet others = (BitSet) standing.clone();
    others.andNot(candidate);
    PathSearch.Verdict verdict = PathSearch.among(stage, candidate, others, floor());
    verdict.path().ifPresent(legs -> takeAlong(candidate, group, legs, false));
    return verdict.path().isPresent();
  }

  /**
   * Things that leave along a direction only together: a part of the blocking graph that no rest
   * blocks.
   */
  private boolean together() {
    for (Vec direction : AXES) {
      if (direction.z() < 0 && floor()) {
        continue;
      }
      for (BitSet set : Clusters.thatLeaveTogether(blocking, direction, standing)) {
        if (set.cardinality() > 1
            && set.cardinality() < standing.cardinality()
            && loosens(set, standing)) {
          takeAlong(set, groupOf(set), List.of(direction.scale(Blocking.FAR)), true);
          return true;
        }
      }
    }
    return false;
  }

  /** The first way off without regard to tools: the screws that cannot be reached are told. */
  private boolean bare() {
    for (BitSet candidate : candidates()) {
      Group group = groupOf(candidate);
      Optional<Vec> way = way(candidate, group, standing);
      if (way.isPresent()) {
        take(candidate, group, way.get(), false);
        return true;
      }
    }
    for (BitSet candidate : candidates()) {
      if (chain(candidate, groupOf(candidate))) {
        return true;
      }
    }
    return tilted(false);
  }

  /** Parts of groups, those told last in front, then single things. */
  private List<BitSet> candidates() {
    List<BitSet> found = new ArrayList<>();
    List<BitSet> singles = new ArrayList<>();
    for (int g = order.size() - 1; g >= 0; g--) {
      Group group = order.get(g);
      for (BitSet part : groups.components(group.in(standing), group.things())) {
        found.add(part);
        if (part.cardinality() > 1) {
          part.stream().forEach(t -> singles.add(of(t)));
        }
      }
    }
    found.addAll(singles);
    return found;
  }

  private Group groupOf(BitSet set) {
    return order.stream().filter(g -> !g.in(set).isEmpty()).findFirst().orElseThrow();
  }

  private void take(BitSet movers, Group group, Vec direction, boolean together) {
    takeAlong(movers, group, List.of(direction.scale(Blocking.FAR)), together);
  }

  /** What leaves only when it is tipped first, group by group and then single things. */
  private boolean tilted(boolean withTools) {
    for (BitSet candidate : candidates()) {
      if (candidate.cardinality() == standing.cardinality()
          || withTools && !loosens(candidate, standing)) {
        continue;
      }
      BitSet others = (BitSet) standing.clone();
      others.andNot(candidate);
      Optional<Tilt.Out> way = Tilt.out(stage, stage.rigid(candidate), stage.rigid(others));
      if (way.isPresent()) {
        remove(candidate, groupOf(candidate), way.get().legs(), false, way.get().degrees());
        return true;
      }
    }
    return false;
  }

  private void takeAlong(BitSet movers, Group group, List<Vec> legs, boolean together) {
    remove(movers, group, legs, together, 0);
  }

  private void remove(BitSet movers, Group group, List<Vec> legs, boolean together, double tilt) {
    removals.add(
        new Removal(
            movers,
            (BitSet) standing.clone(),
            group,
            legs,
            together,
            tilt,
            Optional.ofNullable(obstacles.get(group))));
    standing.andNot(movers);
  }

  private boolean canLeave(BitSet movers, Group group, BitSet stands) {
    return keepsSteady(movers, stands)
        && way(movers, group, stands).isPresent()
        && loosens(movers, stands);
  }

  /** Whether what is left hangs together as before, so that nothing is left in the air. */
  private boolean keepsSteady(BitSet movers, BitSet stands) {
    if (!steady) {
      return true;
    }
    BitSet left = (BitSet) stands.clone();
    left.andNot(movers);
    return groups.count(left) <= groups.count(stands);
  }

  /** A direction in which the movers leave: the one told first, then upwards, forwards, aside. */
  private Optional<Vec> way(BitSet movers, Group group, BitSet stands) {
    for (Vec direction : directions(group)) {
      boolean down = direction.z() < 0 && !onBench && stage.standsForGood(stands);
      if (!down && blocking.isFree(movers, direction, stands)) {
        return Optional.of(direction);
      }
    }
    return Optional.empty();
  }

  private List<Vec> directions(Group group) {
    List<Vec> directions = new ArrayList<>();
    if (!onBench) {
      group.told().ifPresent(s -> directions.add(s.direction().unit().scale(-1)));
    }
    directions.addAll(AXES);
    return directions;
  }

  /** Whether every fastener between the movers and what else stands can be reached. */
  private boolean loosens(BitSet movers, BitSet stands) {
    return unreachable(movers, stands).isEmpty();
  }

  private Optional<Integer> unreachable(BitSet movers, BitSet stands) {
    BitSet seen = withFloor(stands);
    for (int f : between(stage, movers, stands)) {
      if (!reach.isHopeless(f) && !reach.isReachable(f, seen, borrows)) {
        return Optional.of(f);
      }
    }
    return Optional.empty();
  }

  private BitSet withFloor(BitSet stands) {
    return Dismantling.withFloor(stage, reach, stands, onBench);
  }

  /** What stands, and the floor once nothing is turned over any more. */
  static BitSet withFloor(Stage stage, Reach reach, BitSet stands, boolean onBench) {
    BitSet seen = (BitSet) stands.clone();
    seen.set(reach.floor(), !onBench && stage.standsForGood(stands));
    return seen;
  }

  /** Fasteners of which everything still stands, and only some of it moves. */
  static List<Integer> between(Stage stage, BitSet movers, BitSet stands) {
    List<Integer> found = new ArrayList<>();
    for (int f = 0; f < stage.fasteners().size(); f++) {
      boolean moves = false;
      boolean stays = false;
      boolean complete = true;
      for (int thing : stage.joins(f)) {
        complete &= stands.get(thing);
        moves |= movers.get(thing);
        stays |= !movers.get(thing);
      }
      if (complete && moves && stays) {
        found.add(f);
      }
    }
    return found;
  }

  private boolean floor() {
    return !onBench && stage.standsForGood(standing);
  }

  /** Notes what is in the way of a group when it is first in the way. */
  private void remember(BitSet part, Group group) {
    if (obstacles.containsKey(group)) {
      return;
    }
    BitSet others = (BitSet) standing.clone();
    others.andNot(part);
    if (way(part, group, standing).isEmpty()) {
      BitSet best = blocking.blockers(part, directions(group).get(0), others);
      obstacles.put(group, new Removal.Obstacle(best, false));
    } else {
      unreachable(part, standing)
          .ifPresent(
              f -> {
                BitSet things = reach.blockers(f, withFloor(standing));
                things.andNot(part);
                things.clear(reach.floor());
                obstacles.put(group, new Removal.Obstacle(things, true));
              });
    }
  }

  private static BitSet of(int thing) {
    BitSet single = new BitSet();
    single.set(thing);
    return single;
  }
}
