package sawstead.joinery;

/**
 * Butted or lapped, glued, with brads as clamps. The brads go through the board that meets with a
 * face, through a if both do.
 */
public record BradJoint() implements Joint {
  @Override
  public String word() {
    return "brad";
  }

  @Override
  public Joined join(Board a, Board b, Fixings fixings) {
    Meeting meeting = Meeting.faceFirst(a, b, word());
    Fastened brads =
        Brads.in(meeting, word(), meeting.first().thickness(), meeting.depthOfSecond(), fixings);
    return Glue.needed(meeting.joined(meeting.first(), meeting.second(), brads), fixings, meeting);
  }
}
