package sawstead.joinery;

import java.util.List;

/**
 * The end of one board let into a dado in the face of another, glued. The board that meets with an
 * edge is let in and grows by the depth; its end touches the floor of the dado. The dado is as wide
 * as that board was measured thick plus the clearance, half of it on each side, and runs out at
 * each edge of the host that the patch reaches.
 *
 * @param depth mm
 * @param clearance mm
 * @param brads true for brads through the host as clamps
 */
public record DadoJoint(double depth, double clearance, boolean brads) implements Joint {
  /** Refuses a depth that is none and a negative clearance. */
  public DadoJoint {
    new Letting(depth, clearance);
  }

  /** The usual dado in a host: a third deep, at most 6 mm, 0.1 mm wider than its guest. */
  public static DadoJoint usual(Board host) {
    return new DadoJoint(Letting.usualDepth(host.thickness()), Letting.FIT, false);
  }

  @Override
  public String word() {
    return "dado";
  }

  @Override
  public Joined join(Board a, Board b, Fixings fixings) {
    Meeting meeting = Meeting.edgeOnFace(a, b, word());
    Letting letting = new Letting(depth, clearance);
    Board guest = letting.lengthened(meeting);
    Board host = meeting.second().cutBox(letting.air(meeting, List.of()), word());
    return LetIn.fixed(meeting.with(guest, host), word(), depth, brads, fixings);
  }
}
