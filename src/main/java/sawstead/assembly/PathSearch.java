package sawstead.assembly;

import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import sawstead.solid.Body;
import sawstead.solid.Box;
import sawstead.solid.Boxing;
import sawstead.solid.FreeWay;
import sawstead.solid.Vec;

/**
 * Looks for a chain of axis-parallel translations by which some bodies leave others.
 *
 * <p>Idea: of two boxes, the translations of one that make it overlap the other form a box, too. So
 * the forbidden translations are a union of boxes, shrunk by the play; their faces cut space into a
 * grid whose cells are wholly free or wholly forbidden, and a flood fill from no translation to the
 * outside is complete ({@link Grid}). Where something is no axis-parallel box, boxes around it
 * prove a way, and boxes inside it prove that there is none; a way among the boxes inside is tried
 * with the true bodies, and if they do not pass, the answer is undecided.
 */
final class PathSearch {
  /** A body of more pieces counts as one box from outside. */
  private static final int MANY = 8;

  /** So many boxes inside count. */
  private static final int LARGEST = 90;

  private final List<Body> movers;
  private final List<Body> others;
  private final double play;
  private final boolean floor;

  /**
   * What was found.
   *
   * @param path translations one after the other, mm; the last one ends outside; empty when none
   * @param decided false when there is no path and it was not proven that there is none
   */
  record Verdict(Optional<List<Vec>> path, boolean decided) {}

  private PathSearch(List<Body> movers, List<Body> others, double play, boolean floor) {
    this.movers = movers;
    this.others = others;
    this.play = play;
    this.floor = floor;
  }

  /** A chain for things among other things. */
  static Verdict among(Stage stage, BitSet movers, BitSet others, boolean floor) {
    return new PathSearch(stage.rigid(movers), stage.rigid(others), stage.play(), floor).search();
  }

  /** A chain for bodies among other bodies. */
  static Verdict among(List<Body> movers, List<Body> others, double play, boolean floor) {
    return new PathSearch(movers, others, play, floor).search();
  }

  private Verdict search() {
    List<Boxing> moving = movers.stream().map(Boxing::of).toList();
    List<Boxing> still = others.stream().map(Boxing::of).toList();
    boolean exact =
        Stream.concat(moving.stream(), still.stream())
            .allMatch(b -> b.exact() && b.outer().size() <= MANY);
    Optional<Grid> outer = grid(moving, still, true);
    Optional<List<Vec>> path = outer.flatMap(Grid::way);
    if (path.isPresent() || exact && outer.isPresent()) {
      return new Verdict(path, true);
    }
    Optional<Grid> inner = grid(moving, still, false);
    if (inner.isEmpty()) {
      return new Verdict(Optional.empty(), false);
    }
    Optional<List<Vec>> hope = inner.get().way();
    return hope.isEmpty()
        ? new Verdict(Optional.empty(), true)
        : hope.filter(this::passes)
            .map(p -> new Verdict(hope, true))
            .orElse(new Verdict(Optional.empty(), false));
  }

  private Optional<Grid> grid(List<Boxing> moving, List<Boxing> still, boolean outside) {
    List<Box> a = boxes(moving, outside);
    List<Box> b = boxes(still, outside);
    double lowest = a.stream().mapToDouble(x -> x.low().z()).min().orElse(0);
    return Grid.of(a, b, play, floor ? Optional.of(-lowest - play) : Optional.empty());
  }

  /**
   * Boxes that keep the grid small and the answers true: outside, a body of many pieces is one box
   * around; inside, only the largest boxes count.
   */
  private static List<Box> boxes(List<Boxing> boxings, boolean outside) {
    if (outside) {
      return boxings.stream()
          .flatMap(
              x ->
                  x.outer().size() > MANY
                      ? x.outer().stream().reduce(Box::union).stream()
                      : x.outer().stream())
          .toList();
    }
    return boxings.stream()
        .flatMap(x -> x.inner().stream())
        .sorted(Comparator.comparingDouble(PathSearch::volume).reversed())
        .limit(LARGEST)
        .toList();
  }

  private static double volume(Box box) {
    Vec size = box.size();
    return size.x() * size.y() * size.z();
  }

  /** Whether the true bodies pass along a chain. */
  private boolean passes(List<Vec> legs) {
    Vec at = Vec.ZERO;
    for (Vec leg : legs) {
      for (Body mover : movers) {
        Body there = new Body(mover.id(), mover.solid(), mover.placement().moved(at));
        for (Body other : others) {
          if (FreeWay.of(there, leg, other, play, leg.length()) <= leg.length()) {
            return false;
          }
        }
      }
      at = at.plus(leg);
    }
    return true;
  }
}
