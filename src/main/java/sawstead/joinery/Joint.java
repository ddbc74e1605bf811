package sawstead.joinery;

/** A way to join two boards. One record a kind; all are immutable and hold no board. */
public sealed interface Joint
    permits ScrewJoint, PocketJoint, BradJoint, DadoJoint, RabbetJoint, LegJoint, HingeJoint {
  /** The trade's word: screw, pocket, brad, dado, rabbet, leg or hinge. */
  String word();

  /**
   * Joins two boards.
   *
   * @param a axis-parallel board
   * @param b axis-parallel board that touches it (for a hinge: within its gap)
   * @param fixings what is at hand and what is in the way
   * @throws JoineryException if the boards do not meet as this joint needs
   */
  Joined join(Board a, Board b, Fixings fixings);
}
