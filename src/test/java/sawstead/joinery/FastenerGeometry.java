package sawstead.joinery;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sawstead.solid.Body;
import sawstead.solid.Chord;
import sawstead.solid.Distance;
import sawstead.solid.Overlap;
import sawstead.solid.PocketBore;
import sawstead.solid.Vec;

/**
 * Judges joints in tests: how a fastener lies in the finished parts that it joins. It looks at the
 * solids that will be cut, not at how the fastener was placed.
 *
 * <p>The shank is a cylinder with flat ends from the head's seat to the tip, as a polygon around
 * the true circle; a cut is the prism that it takes away, also as a polygon around the true one.
 * Which way it may err: a shank and a cut that are apart by less than 0.04 mm (twice {@link
 * sawstead.solid.Outline#ARC_ERROR}) may be said to meet; a pair that meets is never said to be
 * apart.
 */
final class FastenerGeometry {
  /** Material of a shank in the open below this is rounding, mm3: a sliver 0.01 mm thick. */
  private static final double SLIVER = 0.05;

  private final Fastener fastener;
  private final List<Board> boards;
  private final List<Body> material = new ArrayList<>();
  private final Body shank;

  /**
   * A fastener among the parts that it joins.
   *
   * @param fastener to look at
   * @param boards finished boards that it joins
   * @param hardware other bodies that it joins: leaf of a hinge, plate of a caster
   */
  public FastenerGeometry(Fastener fastener, List<Board> boards, List<Body> hardware) {
    this.fastener = fastener;
    this.boards = List.copyOf(boards);
    this.shank = fastener.body();
    boards.forEach(b -> material.add(b.body()));
    material.addAll(hardware);
  }

  /** The fastener. */
  public Fastener fastener() {
    return fastener;
  }

  /** Length of its axis in the material of one part, mm. */
  public double lengthIn(Body part) {
    return chordsIn(part).stream().mapToDouble(Chord::length).sum();
  }

  /**
   * Wood ahead of the tip in the last part, along the axis, mm; negative by as much as the tip
   * stands out of it.
   */
  public double tipCover() {
    double end = 0;
    for (Body part : material) {
      for (Chord chord : Chord.along(part, fastener.at(), fastener.axis())) {
        if (chord.from() < fastener.length()) {
          end = Math.max(end, chord.to());
        }
      }
    }
    return end - fastener.length();
  }

  /** Volume of the shank that is outside the material of all parts that it joins, mm3. */
  public double volumeInTheOpen() {
    double inside = 0;
    for (Body part : material) {
      inside += Overlap.between(shank, part).map(Overlap::volume).orElse(0.0);
    }
    return Math.max(0, shank.volume() - inside);
  }

  /** True if the shank leaves the material: at a far face, at a side, or in a cut. */
  public boolean breaksThrough() {
    return volumeInTheOpen() > SLIVER;
  }

  /**
   * Least distance from the axis to the edges of a board that run along it, mm: for a screw square
   * to the face all edges, for one driven into an edge those beside it. Infinite if the axis misses
   * the board.
   */
  public double edgeDistance(Board board) {
    return EdgeDistance.inPlane(board, stretches(board));
  }

  /**
   * Least distance from the axis to the two faces of a board, mm, for a fastener that runs along
   * the plies; infinite for one that goes in through a face.
   */
  public double faceDistance(Board board) {
    return EdgeDistance.toFaces(board, stretches(board));
  }

  /** Gap between the shanks of two fasteners, mm; 0 when they touch or meet. */
  public double gap(Fastener other) {
    return Distance.between(shank, other.body()).value();
  }

  /**
   * Cuts of the joined boards that the shank runs into. Its own pocket is none, nor is a dado or a
   * rabbet where another joined part fills it all along the axis.
   */
  public List<Crossing> crossings() {
    List<Crossing> found = new ArrayList<>();
    for (Board board : boards) {
      for (FeatureAir cut : FeatureAir.of(board)) {
        if (!isOwnPocket(board, cut)) {
          Body air = cut.air().body(board.id(), board.placement());
          Optional<Overlap> overlap =
              Overlap.between(shank, air).filter(o -> !isFilled(air, board));
          overlap.ifPresent(
              o -> found.add(new Crossing(board.id(), cut.feature(), o.volume(), o.depth())));
        }
      }
    }
    return found;
  }

  /** Overlaps of the shank with bodies that it does not join; it may be in none. */
  public List<Overlap> strays(List<Body> others) {
    List<Overlap> found = new ArrayList<>();
    for (Body other : others) {
      if (!fastener.joins().contains(other.id())) {
        Overlap.between(shank, other).ifPresent(found::add);
      }
    }
    return found;
  }

  private boolean isOwnPocket(Board board, FeatureAir cut) {
    if (fastener.kind() != FastenerKind.POCKET_SCREW
        || !(cut.feature() instanceof PocketBore bore)) {
      return false;
    }
    Vec floor = bore.at().plus(bore.direction().scale(bore.depth()));
    return board.placement().apply(floor).distance(fastener.at()) < 1e-3;
  }

  /**
   * True if the axis runs through the air, and there everywhere in the material of joined parts
   * other than the one that was cut, whose solid may still hold the cut as material.
   */
  private boolean isFilled(Body air, Board cut) {
    List<Chord> open = chordsIn(air);
    for (Chord chord : open) {
      double length = chord.length();
      for (Body part : material) {
        if (part.id().equals(cut.id())) {
          continue;
        }
        for (Chord solid : chordsIn(part)) {
          length -=
              Math.max(0, Math.min(chord.to(), solid.to()) - Math.max(chord.from(), solid.from()));
        }
      }
      if (length > Board.SAME) {
        return false;
      }
    }
    return !open.isEmpty();
  }

  private List<Rod> stretches(Board board) {
    List<Rod> local = new ArrayList<>();
    for (Chord chord : chordsIn(board.body())) {
      local.add(
          new Rod(
              board.local(fastener.at().plus(fastener.axis().scale(chord.from()))),
              board.local(fastener.at().plus(fastener.axis().scale(chord.to()))),
              0));
    }
    return local;
  }

  private List<Chord> chordsIn(Body part) {
    List<Chord> inside = new ArrayList<>();
    for (Chord chord : Chord.along(part, fastener.at(), fastener.axis())) {
      double from = Math.max(0, chord.from());
      double to = Math.min(fastener.length(), chord.to());
      if (to > from) {
        inside.add(new Chord(from, to));
      }
    }
    return inside;
  }
}
