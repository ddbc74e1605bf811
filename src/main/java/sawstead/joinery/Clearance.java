package sawstead.joinery;

import java.util.ArrayList;
import java.util.List;
import sawstead.solid.Box;
import sawstead.solid.Placement;

/** Everything that new fasteners of a joint must keep clear of. */
final class Clearance {
  /** Fasteners farther than this from both boards cannot matter, mm: longer than any screw. */
  private static final double FAR = 200;

  private final List<Placement> toLocal = new ArrayList<>();
  private final List<List<FeatureAir>> airs = new ArrayList<>();
  private final List<PrismAir> boxes;
  private final List<Rod> rods = new ArrayList<>();

  /** The features of both boards, the fasteners already there and the boxes to keep clear. */
  Clearance(Board a, Board b, Fixings fixings) {
    for (Board board : List.of(a, b)) {
      toLocal.add(board.placement().inverse());
      airs.add(FeatureAir.of(board));
    }
    boxes = fixings.keepClear().stream().map(PrismAir::of).toList();
    Box near = a.box().union(b.box()).grown(FAR);
    for (Fastener fastener : fixings.present()) {
      if (near.contains(fastener.at())) {
        taken(fastener);
      }
    }
  }

  /** From now on, this fastener is in the way as well. */
  void taken(Fastener fastener) {
    rods.add(fastener.shank());
    rods.add(fastener.head());
  }

  /** From now on, the room of this candidate is in the way as well. */
  void taken(Candidate candidate) {
    taken(candidate.fastener());
    // The pocket of one screw must not cut into the pocket of the next.
    rods.addAll(candidate.room().subList(1, candidate.room().size()));
  }

  /** True if nothing is in the room that a fastener needs. */
  boolean allows(Candidate candidate) {
    return candidate.room().stream().allMatch(this::isFree);
  }

  private boolean isFree(Rod room) {
    for (Rod rod : rods) {
      if (!rod.isBeyond(room) && rod.gap(room) < 0) {
        return false;
      }
    }
    for (PrismAir box : boxes) {
      if (!box.isBeyond(room.from(), room.to(), room.radius())
          && box.distance(room.from(), room.to()) < room.radius()) {
        return false;
      }
    }
    for (int i = 0; i < airs.size(); i++) {
      Rod local = room.moved(toLocal.get(i));
      for (FeatureAir cut : airs.get(i)) {
        if (!cut.air().isBeyond(local.from(), local.to(), local.radius())
            && cut.air().distance(local.from(), local.to()) < local.radius()) {
          return false;
        }
      }
    }
    return true;
  }
}
