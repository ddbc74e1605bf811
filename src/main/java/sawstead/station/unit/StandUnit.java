package sawstead.station.unit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sawstead.brief.JointKind;
import sawstead.brief.Mount;
import sawstead.brief.Side;
import sawstead.brief.SideWish;
import sawstead.solid.Axis;
import sawstead.solid.Box;
import sawstead.solid.Vec;
import sawstead.station.Area;
import sawstead.station.Draft;
import sawstead.station.Site;
import sawstead.station.Unit;

/**
 * The stand: base and top of one size, four legs of two strips each, stretchers, side panels, and
 * packers that bring a lapped stretcher flush with the legs where a wing or a hung outfeed is
 * screwed on.
 *
 * <p>Legs are counted from the front left, with the clock seen from above: 1 front left, 2 front
 * right, 3 rear right, 4 rear left.
 */
final class StandUnit implements Unit {

  static final String BASE = "stand/base";
  static final String TOP = "stand/top";

  private static final List<Side> SIDES = List.of(Side.FRONT, Side.REAR, Side.LEFT, Side.RIGHT);

  private final Site site;
  private final StandFrame frame;

  StandUnit(Site site) {
    this.site = site;
    frame = new StandFrame(site);
  }

  @Override
  public void place(Draft draft) {
    Area stand = site.stand();
    Axis grain = stand.width() >= stand.depth() ? Axis.X : Axis.Y;
    draft.panel(BASE, site.sheet(), frame.base(), Axis.Z, true, grain);
    draft.panel(TOP, site.sheet(), frame.top(), Axis.Z, true, grain);
    placeLegs(draft);
    List<String> lower = placeStretchers(draft, false);
    List<String> upper = placeStretchers(draft, true);
    List<String> panels = placePanels(draft);
    List<String> packers = placePackers(draft);
    tellSteps(draft, lower, upper, panels, packers);
  }

  private void placeLegs(Draft draft) {
    for (int n = 1; n <= 4; n++) {
      boolean front = n <= 2;
      boolean left = n == 1 || n == 4;
      draft.panel(face(n), site.sheet(), frame.faceStrip(front, left), Axis.Y, !front, Axis.Z);
      draft.panel(side(n), site.sheet(), frame.sideStrip(front, left), Axis.X, !left, Axis.Z);
    }
  }

  private List<String> placeStretchers(Draft draft, boolean upper) {
    List<String> ids = new ArrayList<>();
    for (Side side : SIDES) {
      Optional<Box> box = frame.stretcher(side, upper);
      if (box.isPresent()) {
        String id = stretcher(side, upper);
        place(draft, id, side, box.get(), alongOf(side));
        ids.add(id);
      }
    }
    return ids;
  }

  private List<String> placePanels(Draft draft) {
    List<String> ids = new ArrayList<>();
    for (Side side : SIDES) {
      Optional<Box> box = frame.panel(side);
      if (box.isPresent()) {
        String id = "stand/panel-" + side.word();
        place(draft, id, side, box.get(), Axis.Z);
        ids.add(id);
      }
    }
    return ids;
  }

  private List<String> placePackers(Draft draft) {
    List<String> ids = new ArrayList<>();
    if (!frame.lapped()) {
      return ids;
    }
    for (Side side : List.of(Side.LEFT, Side.RIGHT, Side.REAR)) {
      boolean needed =
          side == Side.REAR
              ? site.outfeed().filter(o -> o.mount() == Mount.HUNG).isPresent()
              : site.wing(side).isPresent();
      if (needed) {
        String id = packer(side);
        place(draft, id, side, frame.packer(side), alongOf(side));
        ids.add(id);
      }
    }
    return ids;
  }

  private void place(Draft draft, String id, Side side, Box box, Axis grain) {
    boolean towardsPlus = side == Side.REAR || side == Side.RIGHT;
    draft.panel(id, site.sheet(), box, throughOf(side), towardsPlus, grain);
  }

  private void tellSteps(
      Draft draft,
      List<String> lower,
      List<String> upper,
      List<String> panels,
      List<String> packers) {
    draft.step(List.of(BASE), "lay it on a flat floor, good face up", new Vec(0, 0, -1), List.of());
    for (int n = 1; n <= 4; n++) {
      draft.step(
          List.of(face(n), side(n)),
          "lap the side strip behind the face strip, flush at both ends; glue and screw; then screw"
              + " the leg to the base's corner from below",
          new Vec(0, 0, -1),
          List.of("all four legs from one fence setting, so that they are equally long"));
    }
    List<String> first = new ArrayList<>(lower);
    upper.stream().filter(id -> !isRemovable(id)).forEach(first::add);
    first.addAll(panels);
    first.addAll(packers);
    draft.step(
        first,
        "screw the stretchers to the legs, in this order; compare the two diagonals before the last",
        new Vec(0, 0, -1),
        List.of());
    draft.step(
        List.of(TOP), "screw it down onto legs and stretchers", new Vec(0, 0, -1), List.of());
    List<String> last = upper.stream().filter(this::isRemovable).toList();
    if (!last.isEmpty()) {
      draft.step(
          last,
          "screw it on from outside and never glue it: it comes off when the vac must",
          new Vec(0, 1, 0),
          List.of());
    }
  }

  @Override
  public void join(Draft draft) {
    for (int n = 1; n <= 4; n++) {
      draft.join(Joints.leg(), face(n), side(n));
    }
    for (Side side : SIDES) {
      for (boolean upper : new boolean[] {false, true}) {
        if (draft.hasBoard(stretcher(side, upper))) {
          joinStretcher(draft, side, upper);
        }
      }
      if (frame.closing(side) == SideWish.PANEL) {
        String panel = "stand/panel-" + side.word();
        draft.join(Joints.lap(), panel, stretcher(side, true));
        draft.join(Joints.lap(), panel, stretcher(side, false));
      }
      if (draft.hasBoard(packer(side))) {
        draft.join(Joints.lap(), packer(side), stretcher(side, true));
      }
    }
    for (int n = 1; n <= 4; n++) {
      for (String strip : List.of(face(n), side(n))) {
        draft.join(Joints.screwed(false), BASE, strip);
        draft.join(Joints.screwed(false), TOP, strip);
      }
    }
  }

  private void joinStretcher(Draft draft, Side side, boolean upper) {
    String id = stretcher(side, upper);
    boolean removable = isRemovable(id);
    for (String strip : stripsOf(side)) {
      if (frame.lapped()) {
        // Heads outside: in the corners inside, the next stretcher is in the way of a drill.
        draft.join(Joints.screwed(removable), strip, id);
      } else {
        draft.join(Joints.pocket(removable), id, strip);
      }
    }
    if (removable && frame.lapped()) {
      // Screws from above would be under the saw when it has to come off.
      return;
    }
    String plate = upper ? TOP : BASE;
    if (site.wish().stand().joint() == JointKind.POCKET) {
      draft.join(Joints.pocket(removable), id, plate);
    } else {
      draft.join(Joints.screwed(removable), plate, id);
    }
  }

  /** The strips that a side's stretchers are fixed to. */
  private static List<String> stripsOf(Side side) {
    return switch (side) {
      case FRONT -> List.of(face(1), face(2));
      case REAR -> List.of(face(4), face(3));
      case LEFT -> List.of(side(1), side(4));
      case RIGHT -> List.of(side(2), side(3));
      case BELOW -> List.of();
    };
  }

  /** The upper stretcher of an open side is screwed, never glued. */
  private boolean isRemovable(String id) {
    return SIDES.stream()
        .anyMatch(s -> id.equals(stretcher(s, true)) && frame.closing(s) == SideWish.OPEN);
  }

  static String face(int leg) {
    return "stand/leg-" + leg + "-face";
  }

  static String side(int leg) {
    return "stand/leg-" + leg + "-side";
  }

  static String stretcher(Side side, boolean upper) {
    return "stand/stretcher-" + side.word() + (upper ? "-upper" : "-lower");
  }

  static String packer(Side side) {
    return "stand/packer-" + side.word();
  }

  private static Axis throughOf(Side side) {
    return side == Side.FRONT || side == Side.REAR ? Axis.Y : Axis.X;
  }

  private static Axis alongOf(Side side) {
    return side == Side.FRONT || side == Side.REAR ? Axis.X : Axis.Y;
  }
}
