package sawstead.check;

import java.util.ArrayList;
import java.util.List;
import sawstead.joinery.Board;
import sawstead.solid.Body;
import sawstead.solid.Bore;
import sawstead.solid.Face;
import sawstead.solid.Feature;
import sawstead.solid.Opening;
import sawstead.solid.Outline;
import sawstead.solid.Panel;
import sawstead.solid.Placement;
import sawstead.solid.Recess;
import sawstead.solid.Vec;

/**
 * The room that one cut leaves empty in a panel, as a body in the station's frame: what a screw
 * must not meet.
 *
 * @param feature the cut
 * @param body the empty room, closed
 */
record CutAir(Feature feature, Body body) {

  /** The cuts of a board that leave room, in their order: recesses, openings and bores. */
  static List<CutAir> of(Board board) {
    List<CutAir> airs = new ArrayList<>();
    for (Feature feature : board.features()) {
      if (feature instanceof Recess r) {
        airs.add(air(board, r, r.outline(), r.depth(), r.face()));
      } else if (feature instanceof Opening o) {
        airs.add(air(board, o, o.outline(), board.thickness(), Face.BACK));
      } else if (feature instanceof Bore b) {
        airs.add(air(board, b, b.outline(), b.through() ? board.thickness() : b.depth(), b.face()));
      }
    }
    return airs;
  }

  /** Whether something passes through here: a port, a bolt's bore, an opening. */
  boolean isPort() {
    return !(feature instanceof Recess);
  }

  private static CutAir air(
      Board board, Feature feature, Outline outline, double depth, Face face) {
    double bottom = face == Face.FRONT ? board.thickness() - depth : 0;
    Vec origin = board.placement().apply(new Vec(0, 0, bottom));
    return new CutAir(
        feature,
        new Body(
            board.id() + " " + feature.operation(),
            new Panel(outline, depth),
            new Placement(
                board.placement().u(), board.placement().v(), board.placement().w(), origin)));
  }
}
