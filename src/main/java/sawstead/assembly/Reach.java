package sawstead.assembly;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import sawstead.joinery.Fastener;
import sawstead.joinery.FastenerKind;
import sawstead.solid.Body;
import sawstead.solid.Box;
import sawstead.solid.FreeWay;
import sawstead.solid.Vec;
import sawstead.station.Mover;
import sawstead.station.Part;

/**
 * Which things stand in the way of a tool on a fastener, for every tool and angle of its grip; each
 * worked out when first asked for. What stands in the way of a tool at one step stands in its way
 * at every later one, so a fastener is best driven as soon as what it holds is there.
 *
 * <p>Conservative: envelopes are a little larger than the tools (see {@link ToolPlace}), and a grip
 * is tried every {@link #STEP} degrees only. The panel that a pocket is bored into does not count
 * against the bit, whose pocket the solid keeps as material.
 */
final class Reach {
  /** Between two angles that are tried, degrees. */
  static final int STEP = 15;

  private static final int FLOOR_DEPTH = 1000;

  private static final Vec UP = new Vec(0, 0, 1);

  private final Stage stage;
  private final Toolbox toolbox;
  private final List<List<Option>> options;
  private final List<List<Box>> boxes = new ArrayList<>();
  private final Map<Pose, BitSet> poses = new HashMap<>();
  private final Map<Integer, Boolean> hopeless = new HashMap<>();

  /** A tool on a fastener with some parts held open, and what is in its way. */
  private final class Option {
    private final Fastener fastener;
    private final Tool tool;
    private final Optional<Pose> open;
    private final ToolPlace place;
    private final Box around;
    private final BitSet[] grips = new BitSet[360 / STEP];
    private BitSet barrels;

    Option(Fastener fastener, Tool tool, Optional<Pose> open) {
      this.fastener = fastener;
      this.tool = tool;
      this.open = open;
      boolean nut = fastener.kind() == FastenerKind.BOLT;
      Vec head = nut ? fastener.tip() : fastener.at();
      Vec back = nut ? fastener.axis() : fastener.axis().scale(-1);
      if (open.isPresent() && open.get().moves(fastener.joins().get(0))) {
        head = open.get().turn().apply(head);
        back = open.get().turn().turn(back);
      }
      place = new ToolPlace(head, back);
      around = new Box(head, head).grown(tool.reach());
    }

    BitSet barrels() {
      if (barrels == null) {
        barrels = open.isPresent() ? inTheWay(open.get()) : new BitSet();
        List<Body> bodies = place.barrels(tool);
        for (int i = 0; i < bodies.size(); i++) {
          // The pocket is bored, but its panel's solid keeps it as material.
          boolean inPocket = i == 0 && fastener.kind() == FastenerKind.POCKET_SCREW;
          mark(bodies.get(i), inPocket ? fastener.joins().get(0) : "", barrels);
        }
      }
      return barrels;
    }

    BitSet grip(int turn) {
      if (grips[turn] == null) {
        grips[turn] = new BitSet();
        place.grip(tool, turn * STEP).forEach(body -> mark(body, "", grips[turn]));
      }
      return grips[turn];
    }

    private void mark(Body body, String except, BitSet in) {
      Box box = body.box();
      for (int t = 0; t < stage.things().size(); t++) {
        List<Part> parts = stage.thing(t).parts();
        for (int p = 0; p < parts.size() && !in.get(t); p++) {
          Part part = parts.get(p);
          boolean moved = open.isPresent() && open.get().moves(part.id());
          // A swivel's envelope is every place of its wheel at once; the wheel is turned aside.
          boolean aside =
              fastener.kind() == FastenerKind.CASTER_SCREW
                  && part.id().startsWith("casters/swivel");
          if (aside
              || part.id().equals(except)
              || !moved && !boxes.get(t).get(p).overlaps(around, 0)) {
            continue;
          }
          if (moved) {
            in.set(t, meets(body, part.body().moved(open.get().turn())));
          } else if (boxes.get(t).get(p).overlaps(box, 0)) {
            in.set(t, meets(body, part.body()));
          }
        }
      }
      if (box.low().z() < -2 * stage.play() && box.low().z() > -FLOOR_DEPTH) {
        in.set(floor());
      }
    }

    private boolean meets(Body body, Body part) {
      return FreeWay.of(body, place.back(), part, 2 * stage.play(), 0) == 0;
    }

    Optional<ToolUse> free(BitSet standing) {
      if (barrels().intersects(standing)) {
        return Optional.empty();
      }
      if (tool.grip().isEmpty()) {
        return Optional.of(new ToolUse(tool, 0, Optional.empty(), open.map(Pose::words)));
      }
      for (int turn = 0; turn < grips.length; turn++) {
        if (!grip(turn).intersects(standing)) {
          double angle = turn * STEP;
          return Optional.of(
              new ToolUse(tool, angle, Optional.of(place.side(angle)), open.map(Pose::words)));
        }
      }
      return Optional.empty();
    }

    /** What is in the way at the angle with the fewest things in the way. */
    BitSet least(BitSet standing) {
      BitSet best = null;
      for (int turn = 0; turn < (tool.grip().isEmpty() ? 1 : grips.length); turn++) {
        BitSet all = (BitSet) barrels().clone();
        if (tool.grip().isPresent()) {
          all.or(grip(turn));
        }
        all.and(standing);
        if (best == null || all.cardinality() < best.cardinality()) {
          best = all;
        }
      }
      return best;
    }
  }

  Reach(Stage stage, Toolbox toolbox) {
    this.stage = stage;
    this.toolbox = toolbox;
    options = new ArrayList<>();
    stage.fasteners().forEach(f -> options.add(null));
    stage.things().forEach(t -> boxes.add(t.parts().stream().map(p -> p.body().box()).toList()));
  }

  /** Number of the floor in the sets that this returns. */
  int floor() {
    return stage.things().size();
  }

  /** A tool that reaches a fastener among what stands, owned ones first. */
  Optional<ToolUse> use(int fastener, BitSet standing) {
    for (Option option : options(fastener)) {
      Optional<ToolUse> use = option.free(standing);
      if (use.isPresent()) {
        return use;
      }
    }
    return Optional.empty();
  }

  /** Whether a tool reaches it: one that the user owns, or one that must be borrowed, too. */
  boolean isReachable(int fastener, BitSet standing, boolean borrows) {
    for (Option option : options(fastener)) {
      if ((borrows || option.tool.owned()) && option.free(standing).isPresent()) {
        return true;
      }
    }
    return false;
  }

  /** Whether an owned tool would reach a fastener that is not in the station. */
  boolean isReachable(Fastener fastener, BitSet standing) {
    return optionsOf(fastener).stream()
        .anyMatch(option -> option.tool.owned() && option.free(standing).isPresent());
  }

  /**
   * Whether no order can help: no tool reaches it even when only what it holds is there. Bolts
   * count as such, because a nut that no wrench reaches can be a tee-nut that is let in before.
   */
  boolean isHopeless(int fastener) {
    return hopeless.computeIfAbsent(
        fastener,
        f -> {
          BitSet held = new BitSet();
          for (int thing : stage.joins(f)) {
            held.set(thing);
          }
          return stage.fasteners().get(f).kind() == FastenerKind.BOLT
              || !isReachable(f, held, true);
        });
  }

  /** The fewest things that are in the way of some tool; empty when none is. */
  BitSet blockers(int fastener, BitSet standing) {
    BitSet best = null;
    for (Option option : options(fastener)) {
      BitSet least = option.least(standing);
      if (best == null || least.cardinality() < best.cardinality()) {
        best = least;
      }
    }
    return best == null ? new BitSet() : best;
  }

  private List<Option> options(int number) {
    List<Option> known = options.get(number);
    if (known == null) {
      known = optionsOf(stage.fasteners().get(number));
      options.set(number, known);
    }
    return known;
  }

  private List<Option> optionsOf(Fastener fastener) {
    List<Option> known = new ArrayList<>();
    List<Optional<Pose>> poses = new ArrayList<>(List.of(Optional.empty()));
    if (fastener.kind() == FastenerKind.HINGE_SCREW) {
      stage.station().movers().stream()
          .filter(m -> m.setting().isPlain())
          .filter(m -> fastener.joins().stream().anyMatch(id -> concerns(m, id)))
          .flatMap(m -> Pose.of(m).stream())
          .forEach(p -> poses.add(Optional.of(p)));
    }
    for (boolean owned : new boolean[] {true, false}) {
      for (Optional<Pose> pose : poses) {
        for (Tool tool : toolbox.tools(fastener.kind())) {
          if (tool.owned() == owned) {
            known.add(new Option(fastener, tool, pose));
          }
        }
      }
    }
    return known;
  }

  /** Things that the parts held open would be in. */
  private BitSet inTheWay(Pose pose) {
    return poses.computeIfAbsent(
        pose,
        p -> {
          BitSet found = new BitSet();
          for (int t = 0; t < stage.things().size(); t++) {
            for (Part moved : stage.thing(t).parts()) {
              if (p.moves(moved.id())) {
                Body there = moved.body().moved(p.turn());
                for (int o = 0; o < stage.things().size(); o++) {
                  if (o != t
                      && stage.thing(o).parts().stream()
                          .filter(part -> !p.moves(part.id()))
                          .anyMatch(
                              part ->
                                  FreeWay.of(there, UP, part.body(), 2 * stage.play(), 0) == 0)) {
                    found.set(o);
                  }
                }
              }
            }
          }
          return found;
        });
  }

  private static boolean concerns(Mover mover, String id) {
    return mover.moves().contains(id)
        || mover.contacts().stream().anyMatch(c -> c.a().equals(id) || c.b().equals(id));
  }
}
