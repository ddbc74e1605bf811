package sawstead.station.unit;

import sawstead.brief.JointKind;
import sawstead.joinery.BradJoint;
import sawstead.joinery.DadoJoint;
import sawstead.joinery.Joint;
import sawstead.joinery.LegJoint;
import sawstead.joinery.PocketJoint;
import sawstead.joinery.RabbetJoint;
import sawstead.joinery.ScrewJoint;
import sawstead.solid.Face;

/** Which joint a unit's wish means at which place. */
record Joints(JointKind kind) {

  /** Depth of dados and rabbets, mm, and their fit (common practice, no source). */
  private static final double HOUSED = 6;

  private static final double FIT = 0.1;

  /** Room beside a screw for the drill that drives it, mm (common practice, no source). */
  static final double DRIVER = 30;

  /**
   * Where the end of one board meets the face of another and may be let into it.
   *
   * @param atEdge whether they meet along the other's edge, where alone a rabbet can be
   */
  Joint corner(boolean atEdge) {
    return switch (kind) {
      case DADO -> new DadoJoint(HOUSED, FIT, true);
      case RABBET -> atEdge ? new RabbetJoint(HOUSED, FIT, true) : new DadoJoint(HOUSED, FIT, true);
      default -> butt();
    };
  }

  /** Where an edge meets a face and is not let in. */
  Joint butt() {
    return switch (kind) {
      case POCKET -> pocket(false);
      case BRAD -> new BradJoint();
      case SCREW, DADO, RABBET -> screwed(false);
    };
  }

  /** Where two faces lie on each other: neither pockets nor long brads make sense there. */
  static Joint lap() {
    return screwed(false);
  }

  /** Screws; glue as well unless it must come off again. */
  static Joint screwed(boolean removable) {
    return new ScrewJoint(!removable);
  }

  /** Pockets in the face that looks inward. */
  static Joint pocket(boolean removable) {
    return new PocketJoint(Face.BACK, !removable);
  }

  /** The two strips of a leg. */
  static Joint leg() {
    return new LegJoint(true);
  }
}
