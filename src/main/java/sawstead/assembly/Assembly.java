package sawstead.assembly;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import sawstead.joinery.Fastener;
import sawstead.joinery.FastenerKind;
import sawstead.measure.LengthFormat;
import sawstead.solid.Body;
import sawstead.solid.FreeWay;
import sawstead.solid.Vec;
import sawstead.station.Part;
import sawstead.station.Station;
import sawstead.station.Step;

/** Plans the build of a station: takes it apart in thought and turns the order round. */
public final class Assembly {
  /** Over this, two people, kg (common practice, no source). */
  public static final double ONE_PERSON = 23;

  /** Heads lower than this are driven with the station on its side, mm (common practice). */
  private static final double NEAR_FLOOR = 350;

  /** What weighs more is not held up with one hand while the other drives a screw, kg (same). */
  private static final double HEAVY_TO_HOLD = 4;

  /** What is nearer under a thing carries it, mm. */
  private static final double NEAR = 1;

  /** A station with its pockets inside and the one with some outside are compared. */
  private static final int KEPT = 2;

  private static volatile List<LastPlan> last = List.of();

  private final Stage stage;
  private final Blocking blocking;
  private final Reach reach;
  private final Groups groups;
  private final List<Group> order;
  private final List<BuildStep> steps = new ArrayList<>();
  private final List<Driving> drivings = new ArrayList<>();
  private final BitSet driven = new BitSet();
  private final List<Step> told = new ArrayList<>();

  private Assembly(Station station, double contact) {
    stage = new Stage(station, contact);
    blocking = new Blocking(stage);
    reach = new Reach(stage, Toolbox.of(station.brief().tools()));
    groups = Groups.of(stage);
    order = groups.inOrder();
  }

  /**
   * The plan of a station; the same station gives the same plan.
   *
   * @param station to be built
   * @param contact depth up to which touching is no clash, mm
   */
  public static BuildPlan plan(Station station, double contact) {
    List<LastPlan> known = last;
    for (LastPlan one : known) {
      if (one.isOf(station, contact)) {
        return one.plan();
      }
    }
    BuildPlan plan = new Assembly(station, contact).plan();
    last =
        Stream.concat(Stream.of(new LastPlan(station, contact, plan)), known.stream())
            .limit(KEPT)
            .toList();
    return plan;
  }

  private BuildPlan plan() {
    Dismantling whole = new Dismantling(stage, blocking, reach, groups, order, stage.all(), false);
    List<Removal> removals = new ArrayList<>(whole.run());
    Collections.reverse(removals);
    List<BuildPlan.Stuck> stuck = stuck(whole.left());
    if (!whole.left().isEmpty()) {
      Group first =
          order.stream().filter(g -> !g.in(whole.left()).isEmpty()).findFirst().orElseThrow();
      removals.add(
          0, new Removal(whole.left(), whole.left(), first, List.of(), false, 0, Optional.empty()));
    }
    for (int i = 0; i < removals.size(); ) {
      int end = i + 1;
      while (end < removals.size() && sameStep(removals.get(i), removals.get(end))) {
        end++;
      }
      step(removals.subList(i, end));
      i = end;
    }
    drivings.sort(Comparator.comparing(d -> d.fastener().id()));
    List<Exit> exits = new Exits(stage, blocking, reach).all();
    return new BuildPlan(
        steps.stream().map(step -> withReasons(step, exits)).toList(), drivings, stuck, exits);
  }

  /** Says of what comes off again why it does, and by how much the room is short without. */
  private BuildStep withReasons(BuildStep step, List<Exit> exits) {
    List<String> reasons = new ArrayList<>(step.cautions());
    for (Exit exit : exits) {
      if (exit.verdict() == Exit.Verdict.AFTER
          && exit.first().stream().anyMatch(step.places()::contains)) {
        reasons.add(
            "screw it and never glue it: "
                + exit.id()
                + " only comes out once this is off"
                + (Double.isFinite(exit.lacks()) && exit.lacks() > 0
                    ? ", since the way is "
                        + LengthFormat.of(stage.station().brief().units()).near(exit.lacks())
                        + " short of it"
                    : ""));
      }
    }
    return step.cautions().size() == reasons.size() ? step : step.cautioned(reasons);
  }

  /** What follows in the same step: of the same group, one by one, along the same way. */
  private static boolean sameStep(Removal a, Removal b) {
    return a.group().equals(b.group())
        && a.legs().equals(b.legs())
        && a.legs().size() == 1
        && !a.together()
        && !b.together()
        && a.movers().cardinality() == 1
        && b.movers().cardinality() == 1;
  }

  private List<BuildPlan.Stuck> stuck(BitSet left) {
    List<BuildPlan.Stuck> found = new ArrayList<>();
    for (int t = left.nextSetBit(0); t >= 0; t = left.nextSetBit(t + 1)) {
      BitSet mover = new BitSet();
      mover.set(t);
      BitSet others = without(left, t);
      Lack lack = Lack.least(stage, blocking, t, others);
      boolean decided = PathSearch.among(stage, mover, others, stage.standsForGood(left)).decided();
      found.add(
          new BuildPlan.Stuck(
              stage.thing(t).name(), lack.obstacles(), lack.missing(), lack.words(), decided));
    }
    return found;
  }

  private void step(List<Removal> moves) {
    int number = steps.size() + 1;
    Removal first = moves.get(0);
    BitSet all = new BitSet();
    moves.forEach(m -> all.or(m.movers()));
    List<BenchStep> bench =
        moves.size() == 1 && all.cardinality() > 1 ? bench(first, number) : List.of();
    List<String> fasteners = new ArrayList<>();
    bench.forEach(b -> fasteners.addAll(b.fasteners()));
    for (Removal move : moves) {
      fasteners.addAll(
          drive(
              move.movers(),
              move.standing(),
              Dismantling.withFloor(stage, reach, move.standing(), false),
              number));
    }
    List<Vec> path = new ArrayList<>();
    for (Vec leg : first.legs()) {
      path.add(0, leg.scale(-1));
    }
    double mass = stage.mass(all);
    steps.add(
        new BuildStep(
            number,
            name(first.group(), all),
            places(all, first.group()),
            fixing(first, all),
            path.isEmpty() ? Vec.ZERO : path.get(path.size() - 1).unit(),
            path,
            bench,
            fasteners,
            tools(fasteners),
            mass,
            mass > ONE_PERSON ? Math.max(2, (int) Math.ceil(mass / ONE_PERSON / 2)) : 1,
            cautions(first, all, fasteners)));
  }

  private List<BenchStep> bench(Removal whole, int number) {
    List<Group> singles =
        whole.group().things().stream()
            .map(t -> new Group(stage.thing(t).name(), List.of(t), Optional.empty()))
            .toList();
    List<Group> all = new ArrayList<>(singles);
    whole.movers().stream()
        .filter(t -> !whole.group().things().contains(t))
        .forEach(t -> all.add(new Group(stage.thing(t).name(), List.of(t), Optional.empty())));
    Dismantling work = new Dismantling(stage, blocking, reach, groups, all, whole.movers(), true);
    List<Removal> removals = new ArrayList<>(work.run());
    Collections.reverse(removals);
    List<BenchStep> steps = new ArrayList<>();
    if (!work.left().isEmpty()) {
      steps.add(
          new BenchStep(
              places(work.left(), whole.group()),
              Vec.ZERO,
              drive(work.left(), work.left(), work.left(), number)));
    }
    for (Removal removal : removals) {
      boolean lies = removal.movers().equals(removal.standing());
      steps.add(
          new BenchStep(
              places(removal.movers(), whole.group()),
              lies ? Vec.ZERO : removal.legs().get(0).unit().scale(-1),
              drive(removal.movers(), removal.standing(), removal.standing(), number)));
    }
    return steps;
  }

  /** Drives all that can be driven now for the first time; ids of the fasteners. */
  private List<String> drive(BitSet movers, BitSet standing, BitSet seen, int number) {
    List<String> ids = new ArrayList<>();
    for (int f = 0; f < stage.fasteners().size(); f++) {
      if (driven.get(f) || !isDue(f, movers, standing)) {
        continue;
      }
      driven.set(f);
      Fastener fastener = stage.fasteners().get(f);
      Optional<ToolUse> use = reach.use(f, seen);
      List<String> inTheWay = List.of();
      if (use.isEmpty()) {
        BitSet blockers = reach.blockers(f, seen);
        inTheWay = new ArrayList<>(stage.names(without(blockers, reach.floor())));
        if (blockers.get(reach.floor())) {
          inTheWay.add("floor");
        }
      }
      boolean own = use.filter(u -> u.tool().owned()).isPresent();
      drivings.add(
          new Driving(
              fastener,
              number,
              use,
              inTheWay,
              own ? Instead.NOTHING : Instead.of(stage, reach, f, seen)));
      ids.add(fastener.id());
    }
    return ids;
  }

  private boolean isDue(int fastener, BitSet movers, BitSet standing) {
    boolean moves = stage.joins(fastener).length == 0;
    for (int thing : stage.joins(fastener)) {
      if (!standing.get(thing)) {
        return false;
      }
      moves |= movers.get(thing);
    }
    return moves;
  }

  private static BitSet without(BitSet set, int number) {
    BitSet rest = (BitSet) set.clone();
    rest.clear(number);
    return rest;
  }

  private List<String> places(BitSet set, Group group) {
    List<String> ids = new ArrayList<>();
    BitSet left = (BitSet) set.clone();
    for (int thing : group.things()) {
      if (left.get(thing)) {
        left.clear(thing);
        stage.thing(thing).parts().stream().map(Part::id).forEach(ids::add);
      }
    }
    left.stream().forEach(t -> stage.thing(t).parts().stream().map(Part::id).forEach(ids::add));
    return ids;
  }

  /** The group's name, and which of its parts these are where they are not all of them. */
  private String name(Group group, BitSet all) {
    if (all.cardinality() >= group.things().size() || all.cardinality() == 1) {
      return all.cardinality() == 1 ? stage.thing(all.nextSetBit(0)).name() : group.name();
    }
    List<String> parts =
        stage.names(all).stream().map(n -> n.substring(n.lastIndexOf('/') + 1)).toList();
    return group.name()
        + ": "
        + String.join(", ", parts.subList(0, Math.min(3, parts.size())))
        + (parts.size() > 3 ? " and " + (parts.size() - 3) + " more" : "");
  }

  private String fixing(Removal removal, BitSet all) {
    Optional<Step> step = removal.group().told();
    if (removal.legs().isEmpty()) {
      return "no order was found for these";
    }
    if (removal.together()) {
      return "put these on together: none of them goes on alone";
    }
    if (step.isPresent()) {
      boolean again =
          told.contains(step.get()) && all.cardinality() < removal.group().things().size();
      return again ? "as before: " + step.get().fixing() : step.get().fixing();
    }
    Thing thing = stage.thing(all.nextSetBit(0));
    if (thing.isFlexible()) {
      return "plug it in";
    }
    return thing.isEnvelope() ? "put it in its place" : "fix it in its place";
  }

  /** The tools of some fasteners, in the order in which they are first needed. */
  private List<String> tools(List<String> fasteners) {
    Set<String> tools = new LinkedHashSet<>();
    for (Driving driving : drivings) {
      if (fasteners.contains(driving.fastener().id())) {
        if (driving.fastener().kind() == FastenerKind.POCKET_SCREW) {
          tools.add(Toolbox.JIG);
        }
        driving.use().ifPresent(use -> tools.add(use.tool().word()));
      }
    }
    return List.copyOf(tools);
  }

  private List<String> cautions(Removal removal, BitSet all, List<String> fasteners) {
    List<String> cautions = new ArrayList<>();
    removal
        .group()
        .told()
        .ifPresent(
            step -> {
              if (!told.contains(step)) {
                told.add(step);
                cautions.addAll(step.cautions());
              }
            });
    removal.because().flatMap(o -> reason(removal, o)).ifPresent(cautions::add);
    boolean below =
        stage.fasteners().stream()
            .filter(f -> fasteners.contains(f.id()))
            .anyMatch(f -> f.axis().z() > 0.7 && f.at().z() < NEAR_FLOOR);
    if (below && !stage.standsForGood(removal.standing())) {
      cautions.add("tip it on its side to drive the screws from below");
    }
    drivings.stream()
        .filter(d -> fasteners.contains(d.fastener().id()))
        .flatMap(d -> d.use().flatMap(ToolUse::open).stream())
        .distinct()
        .map(pose -> "to drive its screws, hold it open: " + pose)
        .forEach(cautions::add);
    if (removal.tilt() > 0) {
      cautions.add(
          "tip it by %.0f degrees to bring it in: no other way was found"
              .formatted(removal.tilt()));
    }
    if (hangs(removal, all, fasteners)) {
      cautions.add("prop it from below, or have it held, until its first two screws are in");
    }
    if (stage.mass(all) > ONE_PERSON) {
      cautions.add("more than one person should lift this");
    }
    return cautions;
  }

  /** Whether something heavy is screwed on with nothing under it. */
  private boolean hangs(Removal removal, BitSet all, List<String> fasteners) {
    BitSet below = (BitSet) removal.standing().clone();
    below.andNot(all);
    if (stage.mass(all) < HEAVY_TO_HOLD || fasteners.isEmpty() || below.isEmpty()) {
      return false;
    }
    List<Body> carrying = stage.rigid(below);
    Vec down = new Vec(0, 0, -1);
    for (Body body : stage.rigid(all)) {
      if (body.box().low().z() < NEAR) {
        return false;
      }
      for (Body other : carrying) {
        double way = FreeWay.of(body, down, other, stage.play(), NEAR);
        if (way <= NEAR) {
          return false;
        }
      }
    }
    return true;
  }

  /** Why a group comes before others that were told before it. */
  private Optional<String> reason(Removal removal, Removal.Obstacle obstacle) {
    int own = order.indexOf(removal.group());
    List<String> later =
        order.subList(0, own).stream()
            .filter(g -> !g.in(obstacle.things()).isEmpty() && g.in(removal.standing()).isEmpty())
            .map(Group::name)
            .distinct()
            .toList();
    if (later.isEmpty()) {
      return Optional.empty();
    }
    String names = String.join(" and ", later);
    return Optional.of(
        obstacle.ofTools()
            ? "this goes on before " + names + ", which would be in the way of the tools"
            : "this goes on before " + names + ", which would be in its way");
  }
}
