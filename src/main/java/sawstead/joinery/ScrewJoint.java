package sawstead.joinery;

/**
 * Butted or lapped, screwed square through a face.
 *
 * <p>The screws go through the board that meets with a face, through a if both do, into the other.
 *
 * @param glued true to glue it as well, if there is glue; then the screws only clamp
 */
public record ScrewJoint(boolean glued) implements Joint {
  @Override
  public String word() {
    return "screw";
  }

  @Override
  public Joined join(Board a, Board b, Fixings fixings) {
    Meeting meeting = Meeting.faceFirst(a, b, word());
    return meeting.joined(
        meeting.first(),
        meeting.second(),
        ThroughScrews.in(meeting, word(), glued && fixings.glue(), fixings));
  }
}
