package sawstead.joinery;

import java.util.Objects;
import sawstead.solid.Face;

/**
 * Butted, with pocket screws from a face of the board that meets with an edge (a if both do) into
 * the other. Each pocket is a {@link sawstead.solid.PocketBore}; see {@link PocketBit} for its
 * sizes.
 *
 * @param face of the butting board that the pockets are in
 * @param glued true to glue it as well, if there is glue
 */
public record PocketJoint(Face face, boolean glued) implements Joint {
  /** Refuses a missing face. */
  public PocketJoint {
    Objects.requireNonNull(face, "face");
  }

  /** The same with the pockets in the other face. */
  public PocketJoint turned() {
    return new PocketJoint(face == Face.BACK ? Face.FRONT : Face.BACK, glued);
  }

  @Override
  public String word() {
    return "pocket";
  }

  @Override
  public Joined join(Board a, Board b, Fixings fixings) {
    Meeting meeting = Meeting.edgeFirst(a, b, word());
    return Pockets.cut(meeting, this, glued && fixings.glue(), fixings);
  }
}
