package sawstead.station.unit;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import sawstead.brief.OutfeedWish;
import sawstead.brief.Side;
import sawstead.joinery.HingeJoint;
import sawstead.joinery.HingeLine;
import sawstead.joinery.Joined;
import sawstead.joinery.Stretch;
import sawstead.solid.Axis;
import sawstead.solid.Bevel;
import sawstead.solid.Box;
import sawstead.solid.Corner;
import sawstead.solid.Face;
import sawstead.solid.Outline;
import sawstead.solid.Turn;
import sawstead.solid.Vec;
import sawstead.station.Area;
import sawstead.station.Contact;
import sawstead.station.Draft;
import sawstead.station.Mover;
import sawstead.station.Routing;
import sawstead.station.Site;
import sawstead.station.Unit;

/**
 * One or two lids on the outfeed's box, each on a continuous hinge on the outer side of a wall,
 * with a chamfered leading edge and relief grooves in line with the miter slots. One lid hangs at
 * the rear unless a leaf is there; two hang at the sides.
 */
final class OutfeedLids implements Unit {

  /** Between two lids, mm. */
  private static final double GAP = 2;

  /** Least distance of a groove's wall from the gap between two lids, mm. */
  private static final double FROM_GAP = 20;

  /** How far a lid opens, degrees: past upright, on a stay (common practice, no source). */
  private static final double OPEN = 105;

  private final Site site;
  private final Site.BoxPlan plan;
  private final OutfeedWish wish;
  private final LeafHinge hinges;

  OutfeedLids(Site site, Site.BoxPlan plan, OutfeedWish wish) {
    this.site = site;
    this.plan = plan;
    this.wish = wish;
    hinges = new LeafHinge(plan, wish.hardware());
  }

  /** Ids of the lids on a draft. */
  static List<String> of(Draft draft) {
    return Stream.of("outfeed/lid", "outfeed/lid-left", "outfeed/lid-right")
        .filter(draft::hasBoard)
        .toList();
  }

  /** Where two lids meet: the middle, or as near to it as the grooves allow. */
  static double split(Site site, Site.BoxPlan plan, OutfeedWish wish) {
    double middle = plan.walls().centreX();
    double best = middle;
    for (Groove groove : Groove.of(site, wish)) {
      double away = groove.width() / 2 + FROM_GAP;
      if (Math.abs(groove.x() - middle) < away) {
        best = groove.x() + Math.copySign(away, middle - groove.x());
      }
    }
    return best;
  }

  @Override
  public void place(Draft draft) {
    Area a = plan.walls();
    if (wish.lids() == 2) {
      double split = split(site, plan, wish);
      lid(draft, "outfeed/lid-left", a.left(), split - GAP / 2);
      lid(draft, "outfeed/lid-right", split + GAP / 2, a.right());
    } else {
      lid(draft, "outfeed/lid", a.left(), a.right());
    }
    draft.step(
        of(draft),
        "hang on its hinge; drill every hinge screw's pilot",
        new Vec(0, 0, -1),
        List.of(
            "fit a stay: a lid that falls shut crushes fingers",
            "mark the grooves from the saw's real slots before you rout them"));
  }

  /** The face grain lies across the grooves, which weaken a lid along their own line. */
  private void lid(Draft draft, String id, double from, double to) {
    Area lid = new Area(from, to, plan.walls().front(), plan.walls().rear());
    draft.panel(id, plan.lid(), lid.between(plan.rim(), plan.surface()), Axis.Z, true, Axis.X);
  }

  @Override
  public void cut(Draft draft) {
    for (Groove groove : Groove.of(site, wish)) {
      groove.cut(draft, plan, of(draft));
    }
    for (Routing routing : Routing.of(site, draft.boards())) {
      draft.caution(
          routing.panel(),
          List.of("rout " + routing.words(site.brief().units()) + "; the saw unplugged"));
    }
    double chamfer = wish.chamfer().nominal();
    if (chamfer > 0) {
      Vec front = new Vec(plan.walls().left(), plan.walls().front(), plan.rim());
      for (String id : of(draft)) {
        draft.change(id, b -> b.with(leading(b.outline(), b.local(front).y(), chamfer)));
      }
    }
  }

  /** The chamfer along the edge that boards meet first: both corners of that edge have this v. */
  private static Bevel leading(Outline outline, double v, double leg) {
    List<Corner> corners = outline.corners();
    for (int i = 0; i < corners.size(); i++) {
      Corner from = corners.get(i);
      Corner to = corners.get((i + 1) % corners.size());
      if (Math.abs(from.v() - v) < 1e-6 && Math.abs(to.v() - v) < 1e-6) {
        return Bevel.alongEdge(outline, i, Face.FRONT, leg, leg);
      }
    }
    throw new IllegalStateException("a lid without a leading edge");
  }

  @Override
  public void join(Draft draft) {
    for (String lid : of(draft)) {
      hang(draft, lid);
    }
  }

  private void hang(Draft draft, String lid) {
    Side side =
        switch (lid) {
          case "outfeed/lid-left" -> Side.LEFT;
          case "outfeed/lid-right" -> Side.RIGHT;
          default -> plan.hinge();
        };
    boolean rear = side != Side.LEFT && side != Side.RIGHT;
    String wall =
        rear ? OutfeedUnit.BACK : side == Side.LEFT ? OutfeedUnit.LEFT : OutfeedUnit.RIGHT;
    HingeJoint hinge =
        HingeJoint.outside(
            lid + "-hinge", hinges.profile(draft, lid), rear ? Axis.Y : Axis.X, side != Side.LEFT);
    if (rear) {
      hinge = hinge.keepingClear(grooves(draft, lid));
    }
    Joined joined = draft.join(hinge, wall, lid);
    HingeLine line = joined.axis().orElseThrow();
    List<Contact> contacts = new ArrayList<>(LeafHinge.contacts(joined, lid, wall));
    Stream.of(
            OutfeedUnit.FRONT,
            OutfeedUnit.BACK,
            OutfeedUnit.LEFT,
            OutfeedUnit.RIGHT,
            OutfeedUnit.DIVIDER,
            OutfeedLeaf.bar("left"),
            OutfeedLeaf.bar("right"))
        .filter(draft::hasBoard)
        .forEach(
            other -> {
              contacts.add(new Contact(lid, other));
              draft.touch(lid, other);
            });
    draft.mover(
        new Mover(
            lid + "-opens",
            LeafHinge.moving(joined, lid),
            new Turn(line.at(), opening(side), 0, OPEN, 0),
            contacts.stream().distinct().toList()));
  }

  /** The direction of the pin about which the right hand opens a lid that hangs at that side. */
  private static Vec opening(Side side) {
    return switch (side) {
      case LEFT -> new Vec(0, -1, 0);
      case RIGHT -> new Vec(0, 1, 0);
      default -> new Vec(-1, 0, 0);
    };
  }

  /** Stretches along x that hinge screws keep out of: the grooves that cross the hinge's line. */
  private List<Stretch> grooves(Draft draft, String lid) {
    Box box = draft.board(lid).box();
    return Groove.of(site, wish).stream()
        .filter(g -> g.x() > box.low().x() && g.x() < box.high().x())
        .map(g -> new Stretch(g.x() - g.width() / 2, g.x() + g.width() / 2))
        .toList();
  }
}
