package sawstead.station.unit;

import java.util.List;
import sawstead.brief.CircleCut;
import sawstead.brief.Cut;
import sawstead.brief.CutFace;
import sawstead.brief.GrooveCut;
import sawstead.brief.OpeningCut;
import sawstead.brief.Point;
import sawstead.brief.RecessCut;
import sawstead.solid.Bore;
import sawstead.solid.Corner;
import sawstead.solid.Face;
import sawstead.solid.Feature;
import sawstead.solid.Opening;
import sawstead.solid.Outline;
import sawstead.solid.Recess;

/** Turns the cuts of a brief into features of a panel. */
final class Cuts {
  private Cuts() {}

  /**
   * The feature that a cut makes.
   *
   * @throws sawstead.solid.OutlineException when its outline crosses itself or has no area
   * @throws sawstead.solid.SolidException when its sizes cannot be
   */
  static Feature feature(Cut cut) {
    if (cut instanceof CircleCut circle) {
      return circle
          .depth()
          .map(
              d ->
                  new Bore(
                      circle.at().u(), circle.at().v(), circle.diameter(), d, face(circle.face())))
          .orElseGet(() -> Bore.through(circle.at().u(), circle.at().v(), circle.diameter()));
    }
    if (cut instanceof OpeningCut opening) {
      return new Opening(outline(opening.outline()));
    }
    if (cut instanceof GrooveCut groove) {
      Point a = groove.from();
      Point b = groove.to();
      Outline outline =
          groove.roundEnds()
              ? Outline.slot(a.u(), a.v(), b.u(), b.v(), groove.width())
              : Outline.bar(a.u(), a.v(), b.u(), b.v(), groove.width());
      return new Recess("groove", outline, groove.depth(), face(groove.face()));
    }
    RecessCut recess = (RecessCut) cut;
    return new Recess("recess", outline(recess.outline()), recess.depth(), face(recess.face()));
  }

  /** A closed outline of straight edges. */
  static Outline outline(List<Point> corners) {
    return Outline.polygon(corners.stream().map(p -> Corner.of(p.u(), p.v())).toList());
  }

  static Face face(CutFace face) {
    return face == CutFace.FRONT ? Face.FRONT : Face.BACK;
  }
}
