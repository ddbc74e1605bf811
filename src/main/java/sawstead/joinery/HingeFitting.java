package sawstead.joinery;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import sawstead.solid.Body;
import sawstead.solid.Box;
import sawstead.solid.Placement;
import sawstead.solid.Solids;
import sawstead.solid.Vec;

/** Cuts the reliefs of a hinge, makes its bodies and puts its screws. */
final class HingeFitting {
  /** Room around the knuckle in its relief, mm (common practice, no source). */
  private static final double RELIEF_ROOM = 0.5;

  /** Pieces of hinge shorter than this hold nothing, mm (common practice, no source). */
  private static final double SHORTEST = 50;

  private final HingeJoint hinge;
  private final HingeSection section;
  private final Board a;
  private final Board b;
  private final double r;

  HingeFitting(HingeJoint hinge, HingeSection section, Board a, Board b) {
    this.hinge = hinge;
    this.section = section;
    this.a = a;
    this.b = b;
    this.r = hinge.profile().outerRadius();
  }

  Joined fitted(Fixings fixings) {
    List<Stretch> pieces = pieces();
    Board newA = a;
    Board newB = b;
    List<Body> bodies = new ArrayList<>();
    List<Fastener> screws = new ArrayList<>();
    List<String> lacks = new ArrayList<>();
    Fixings now = fixings;
    for (int i = 0; i < pieces.size(); i++) {
      Stretch piece = pieces.get(i);
      String number = pieces.size() == 1 ? "" : "-" + (i + 1);
      if (hinge.mounting() == Mounting.OUTSIDE) {
        newA = relieved(newA, piece);
        newB = relieved(newB, piece);
      }
      for (Leaf leaf : List.of(leafOnA(piece, number), leafOnB(piece, number))) {
        bodies.add(leaf.body());
        Fastened fastened = HingeScrews.in(leaf, piece, section, hinge.profile(), now);
        screws.addAll(fastened.fasteners());
        lacks.addAll(fastened.shortfalls());
        now = now.and(fastened.fasteners());
      }
      bodies.add(knuckle(piece, number));
    }
    if (pieces.isEmpty()) {
      lacks.add("the keep-clear stretches leave no room for hinge " + hinge.id());
    }
    return new Joined(newA, newB, screws, bodies, Optional.of(section.line()), lacks);
  }

  /** What the keep-clear stretches leave of the shared length, in pieces worth having. */
  List<Stretch> pieces() {
    List<Stretch> sorted = new ArrayList<>(hinge.keepClear());
    sorted.sort(Comparator.comparingDouble(Stretch::from));
    List<Stretch> left = new ArrayList<>();
    double from = section.shared().from();
    double end = section.shared().to();
    for (Stretch clear : sorted) {
      add(left, from, Math.min(clear.from(), end));
      from = Math.max(from, clear.to());
    }
    add(left, from, end);
    return left;
  }

  private static void add(List<Stretch> left, double from, double to) {
    if (to - from >= SHORTEST) {
      left.add(new Stretch(from, to));
    }
  }

  private Board relieved(Board board, Stretch piece) {
    double reach = r + RELIEF_ROOM;
    Vec from = section.pin().minus(section.m().unit().scale(reach));
    Box air = section.box(from, 2 * reach, -reach, piece);
    if (!air.overlaps(board.box(), -Board.SAME)) {
      return board;
    }
    if (board.thickness() < 2 * reach) {
      throw new JoineryException(
          "the knuckle of hinge "
              + hinge.id()
              + " needs a relief of "
              + reach
              + " mm, too deep for "
              + board.id()
              + " of "
              + board.thickness()
              + " mm");
    }
    return board.cutBox(air, "relief");
  }

  private Leaf leafOnA(Stretch piece, String number) {
    HingeProfile p = hinge.profile();
    double width = p.leafWidth() - r;
    Heading m = section.m();
    Heading n = section.n();
    if (hinge.mounting() == Mounting.OUTSIDE) {
      Vec from = section.pin().minus(m.unit().scale(r));
      Box box = section.box(from, -width, p.leafThickness(), piece);
      return new Leaf(hinge.id() + "/leaf-a" + number, box, a, n.opposite());
    }
    Vec from = Heading.with(section.pin(), m.axis(), section.level().along(m.axis()));
    from = from.plus(n.unit().scale(r));
    Box box = section.box(from, p.leafThickness(), width, piece);
    return new Leaf(hinge.id() + "/leaf-a" + number, box, a, m.opposite());
  }

  private Leaf leafOnB(Stretch piece, String number) {
    HingeProfile p = hinge.profile();
    Heading n = section.n();
    Vec from = Heading.with(section.pin(), n.axis(), section.level().along(n.axis()));
    from = from.plus(section.m().unit().scale(r));
    Box box = section.box(from, p.leafWidth() - r, p.leafThickness(), piece);
    return new Leaf(hinge.id() + "/leaf-b" + number, box, b, n.opposite());
  }

  private Body knuckle(Stretch piece, String number) {
    Vec w = section.run().unit();
    Vec u = section.m().unit();
    return new Body(
        hinge.id() + "/knuckle" + number,
        Solids.cylinder(hinge.profile().knuckle(), piece.length()),
        new Placement(u, w.cross(u), w, Heading.with(section.pin(), section.run(), piece.from())));
  }
}
