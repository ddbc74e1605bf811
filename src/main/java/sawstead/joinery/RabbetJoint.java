package sawstead.joinery;

import java.util.List;
import sawstead.solid.Axis;
import sawstead.solid.Box;

/**
 * The end of one board let into a rabbet along the edge of another, glued: as a dado, but the
 * recess is open to the host's edge on one side of the guest.
 *
 * @param depth mm
 * @param clearance mm, half of it between the guest and the rabbet's wall
 * @param brads true for brads through the host as clamps
 */
public record RabbetJoint(double depth, double clearance, boolean brads) implements Joint {
  /** Refuses a depth that is none and a negative clearance. */
  public RabbetJoint {
    new Letting(depth, clearance);
  }

  /** The usual rabbet in a host: a third deep, at most 6 mm, 0.1 mm of clearance. */
  public static RabbetJoint usual(Board host) {
    return new RabbetJoint(Letting.usualDepth(host.thickness()), Letting.FIT, false);
  }

  @Override
  public String word() {
    return "rabbet";
  }

  @Override
  public Joined join(Board a, Board b, Fixings fixings) {
    Meeting meeting = Meeting.edgeOnFace(a, b, word());
    Letting letting = new Letting(depth, clearance);
    Board guest = letting.lengthened(meeting);
    Board host = meeting.second().cutBox(letting.air(meeting, List.of(nearEdge(meeting))), word());
    return LetIn.fixed(meeting.with(guest, host), word(), depth, brads, fixings);
  }

  /** The way to the edge of the host that the guest lies at. */
  private static Heading nearEdge(Meeting meeting) {
    Axis across = meeting.first().through();
    Box patch = meeting.patch().rectangle();
    Box host = meeting.second().box();
    double below = patch.low().along(across) - host.low().along(across);
    double above = host.high().along(across) - patch.high().along(across);
    if (Math.min(below, above) >= meeting.first().thickness()) {
      throw new JoineryException(
          "a rabbet runs along an edge, but "
              + meeting.first().id()
              + " meets "
              + meeting.second().id()
              + " "
              + Math.min(below, above)
              + " mm from its edge: use a dado");
    }
    return new Heading(across, below > above);
  }
}
