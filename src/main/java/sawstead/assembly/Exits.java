package sawstead.assembly;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import sawstead.joinery.Fastener;
import sawstead.solid.Body;
import sawstead.solid.FreeWay;
import sawstead.solid.Turn;
import sawstead.solid.Vec;
import sawstead.station.Mover;
import sawstead.station.PartKind;

/**
 * How what is kept in the finished station comes out: straight, by a chain, with a lid, a leaf or
 * its drawer open, after something that is screwed and not glued is taken off, and at last tilted.
 */
final class Exits {
  static final List<Vec> DIRECTIONS =
      List.of(
          new Vec(0, -1, 0),
          new Vec(-1, 0, 0),
          new Vec(1, 0, 0),
          new Vec(0, 0, 1),
          new Vec(0, 1, 0));

  /** What can be moved so far once its screws are out, a person turns out by hand, mm. */
  private static final double LOOSE = 100;

  private final Stage stage;
  private final Blocking blocking;

  /** By thing, once asked for: the finished station does not change. */
  private final Map<Integer, Boolean> removable = new HashMap<>();

  private final Reach reach;

  Exits(Stage stage, Blocking blocking, Reach reach) {
    this.stage = stage;
    this.blocking = blocking;
    this.reach = reach;
  }

  /** The exits of the vac and of all contents. */
  List<Exit> all() {
    List<Exit> exits = new ArrayList<>();
    for (int t = 0; t < stage.things().size(); t++) {
      Thing thing = stage.thing(t);
      boolean kept = thing.isEnvelope() && !thing.isFlexible();
      if (kept && !thing.name().equals(Thing.SAW) && !thing.name().startsWith("casters/")) {
        exits.add(exit(t));
      }
    }
    return exits;
  }

  private Exit exit(int number) {
    BitSet others = stage.all();
    others.clear(number);
    String id = stage.thing(number).name();
    List<Body> movers = stage.thing(number).bodies();
    Way way = new Way(stage, movers);
    Way.Found found = way.out(stage.rigid(others));
    if (found.path().isPresent()) {
      return free(id, Exit.Verdict.FREE, found, way, stage.rigid(others), List.of());
    }
    boolean decided = found.decided();
    for (Mover mover : stage.station().movers()) {
      boolean carries = mover.moves().contains(id);
      if ((carries || mover.motion() instanceof Turn) && opensByHand(mover)) {
        List<Body> open = opened(others, mover);
        Way from = carries ? new Way(stage, carried(movers, mover)) : way;
        Way.Found then = from.out(open);
        if (then.path().isPresent()) {
          return free(id, Exit.Verdict.AFTER, then, from, open, List.of(mover.id()));
        }
      }
    }
    Optional<Exit> after = afterRemoving(id, number, way, others);
    if (after.isPresent()) {
      return after.get();
    }
    return tilted(id, movers, others).orElseGet(() -> locked(id, number, others, decided));
  }

  /** What a drawer carries out with it. */
  private static List<Body> carried(List<Body> bodies, Mover mover) {
    return bodies.stream().map(b -> b.moved(mover.motion().at(mover.motion().to()))).toList();
  }

  /** A lid, a leaf or a drawer; not a blade that tilts, nor a motion while others are elsewhere. */
  private boolean opensByHand(Mover mover) {
    return mover.setting().isPlain()
        && mover.moves().stream()
            .flatMap(id -> stage.station().part(id).stream())
            .anyMatch(p -> p.kind() == PartKind.PANEL);
  }

  private Exit free(
      String id,
      Exit.Verdict verdict,
      Way.Found found,
      Way way,
      List<Body> others,
      List<String> first) {
    List<Vec> path = found.path().orElseThrow();
    return new Exit(
        id, verdict, path, first, way.clearance(path, others), Optional.empty(), List.of(), 0, "");
  }

  private List<Body> opened(BitSet set, Mover mover) {
    return stage.rigid(set).stream()
        .map(
            b ->
                mover.moves().contains(b.id())
                    ? b.moved(mover.motion().at(mover.motion().to()))
                    : b)
        .toList();
  }

  /** The fewest removable things that free a straight way, or one that frees a chain. */
  private Optional<Exit> afterRemoving(String id, int number, Way way, BitSet others) {
    BitSet self = new BitSet();
    self.set(number);
    BitSet best = null;
    for (Vec direction : DIRECTIONS) {
      BitSet inTheWay = blocking.blockers(self, direction, others);
      boolean fewer = best == null || inTheWay.cardinality() < best.cardinality();
      if (fewer && inTheWay.stream().allMatch(this::isRemovable)) {
        best = inTheWay;
      }
    }
    for (int t = others.nextSetBit(0); t >= 0 && best == null; t = others.nextSetBit(t + 1)) {
      if (isRemovable(t)) {
        BitSet rest = (BitSet) others.clone();
        rest.clear(t);
        if (way.out(stage.rigid(rest)).path().isPresent()) {
          best = new BitSet();
          best.set(t);
        }
      }
    }
    if (best == null) {
      return Optional.empty();
    }
    BitSet rest = (BitSet) others.clone();
    rest.andNot(best);
    List<Body> bodies = stage.rigid(rest);
    // What overlaps the thing itself blocks no direction, but leaves no path either.
    Way.Found found = way.out(bodies);
    List<String> removed = stage.names(best);
    return found
        .path()
        .map(p -> free(id, Exit.Verdict.AFTER, found, way, bodies, removed))
        .map(exit -> exit.lacking(Lack.least(stage, blocking, number, others)));
  }

  /** Screwed, not glued, with every screw in reach and loose then, in the finished station. */
  private boolean isRemovable(int thing) {
    return removable.computeIfAbsent(thing, this::findRemovable);
  }

  private boolean findRemovable(int thing) {
    List<Integer> fasteners = new ArrayList<>();
    for (int f = 0; f < stage.fasteners().size(); f++) {
      for (int joined : stage.joins(f)) {
        if (joined == thing) {
          fasteners.add(f);
        }
      }
    }
    BitSet all = stage.all();
    all.set(reach.floor());
    for (int f : fasteners) {
      Fastener fastener = stage.fasteners().get(f);
      if (fastener.glued() || !reach.isReachable(f, all, false)) {
        return false;
      }
    }
    return !fasteners.isEmpty() && isLoose(thing);
  }

  /** Whether it can be moved by {@link #LOOSE} some way; a person then turns it out by hand. */
  private boolean isLoose(int thing) {
    BitSet others = stage.all();
    others.clear(thing);
    List<Body> still = stage.rigid(others);
    List<Vec> ways = new ArrayList<>(DIRECTIONS);
    ways.add(new Vec(0, 0, -1));
    return ways.stream()
        .anyMatch(
            way ->
                stage.thing(thing).bodies().stream()
                    .allMatch(
                        a ->
                            still.stream()
                                .allMatch(
                                    b -> FreeWay.of(a, way, b, stage.play(), LOOSE) > LOOSE)));
  }

  private Optional<Exit> tilted(String id, List<Body> movers, BitSet others) {
    List<Body> still = stage.rigid(others);
    return Tilt.out(stage, movers, still)
        .map(
            out ->
                new Exit(
                    id,
                    Exit.Verdict.TILTED,
                    out.legs(),
                    List.of(),
                    new Way(stage, out.bodies()).clearance(out.legs(), still),
                    Optional.of(out.turn()),
                    List.of(),
                    0,
                    ""));
  }

  private Exit locked(String id, int number, BitSet others, boolean decided) {
    Lack lack = Lack.least(stage, blocking, number, others);
    return new Exit(
        id,
        decided ? Exit.Verdict.NONE : Exit.Verdict.UNDECIDED,
        List.of(),
        List.of(),
        0,
        Optional.empty(),
        lack.obstacles(),
        lack.missing(),
        lack.words());
  }
}
