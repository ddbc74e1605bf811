package sawstead.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import sawstead.joinery.Board;
import sawstead.solid.Body;
import sawstead.solid.Face;
import sawstead.solid.Overlap;
import sawstead.solid.Panel;
import sawstead.solid.Placement;
import sawstead.solid.Recess;
import sawstead.solid.Vec;

/**
 * Under every groove enough wood remains: {@code groove-floor} below {@link #LEAST} (common
 * practice, no source); stop for a relief groove, on which boards are set down, mind for any other.
 * Grooves that meet from both faces count together. Rabbets are left out: the tongue of a rabbet is
 * carried by the part that sits in it.
 *
 * <p>Exact for single recesses; two from opposite faces are accused only when their outlines share
 * area.
 */
final class FloorCheck implements Check {
  /** Least thickness left under a groove, mm (common practice, no source). */
  static final double LEAST = 6;

  private static final Set<String> LEFT_OUT = Set.of("rabbet");

  /** A floor above a joint's recess or a scratch is no news; only these are told as margins. */
  private static final String TOLD = "relief";

  @Override
  public Outcome judge(Scene scene) {
    Outcome.Notes notes = new Outcome.Notes();
    double least = Double.POSITIVE_INFINITY;
    String thinnest = null;
    for (Board board : scene.station().boards().values()) {
      for (Recess recess : recesses(board)) {
        double floor = board.thickness() - recess.depth() - opposite(board, recess);
        if (floor < LEAST - 1e-9) {
          notes.add(finding(scene, board, recess, floor));
        }
        if (recess.operation().equals(TOLD) && floor < least) {
          least = floor;
          thinnest = board.id();
        }
      }
    }
    if (thinnest != null) {
      notes.add(
          Margin.length(
              "relief-floor", "wood under the relief grooves", List.of(thinnest), least, LEAST));
    }
    return notes.outcome();
  }

  private static List<Recess> recesses(Board board) {
    List<Recess> found = new ArrayList<>();
    board.features().stream()
        .filter(f -> f instanceof Recess && !LEFT_OUT.contains(f.operation()))
        .forEach(f -> found.add((Recess) f));
    return found;
  }

  /** Depth of the deepest recess from the other face that shares area with this one, mm. */
  private static double opposite(Board board, Recess recess) {
    return recesses(board).stream()
        .filter(other -> other.face() != recess.face() && sharesArea(recess, other))
        .mapToDouble(Recess::depth)
        .max()
        .orElse(0);
  }

  private static boolean sharesArea(Recess a, Recess b) {
    Body first = new Body("a", new Panel(a.outline(), 1), Placement.identity());
    Body second = new Body("b", new Panel(b.outline(), 1), Placement.identity());
    return Overlap.between(first, second).isPresent();
  }

  private static Finding finding(Scene scene, Board board, Recess recess, double floor) {
    Vec middle = recess.outline().bounds().centre();
    double w = recess.face() == Face.FRONT ? board.thickness() - recess.depth() : recess.depth();
    Words words = scene.words();
    String left =
        floor > 0
            ? "only " + words.length(floor) + " of wood remains under it"
            : "nothing remains under it";
    return new Finding(
        recess.operation().equals(TOLD) ? Severity.STOP : Severity.MIND,
        "groove-floor",
        List.of(board.id()),
        Optional.of(board.placement().apply(new Vec(middle.x(), middle.y(), w))),
        "the "
            + recess.operation()
            + " in "
            + board.id()
            + " is "
            + words.length(recess.depth())
            + " deep and "
            + left
            + "; it breaks when something heavy is set down",
        "keep at least "
            + words.length(LEAST)
            + ": a shallower cut, a thicker sheet, or a bar that hangs less far down");
  }
}
