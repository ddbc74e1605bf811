package sawstead.joinery;

/**
 * The two strips of an L-leg: the face strip lies over the edge of the lapped strip, flush with its
 * outer face. a is the face strip, b the lapped strip.
 *
 * <p>For outside faces of equal width, the lapped strip is narrower by the thickness of the face
 * strip: see {@link #lappedWidth}.
 *
 * @param screwed true for glue and screws, false for glue and brads
 */
public record LegJoint(boolean screwed) implements Joint {
  @Override
  public String word() {
    return "leg";
  }

  /**
   * Width of the lapped strip of a leg with equal outside faces, mm.
   *
   * @param section width of an outside face of the leg, mm
   * @param thickness measured thickness of the face strip, mm
   */
  public static double lappedWidth(double section, double thickness) {
    if (!(thickness > 0 && section > thickness)) {
      throw new JoineryException(
          "a leg of " + section + " mm cannot be made of strips " + thickness + " mm thick");
    }
    return section - thickness;
  }

  @Override
  public Joined join(Board a, Board b, Fixings fixings) {
    Meeting meeting = Meeting.of(a, b, word());
    if (meeting.patch().aFace().isEmpty() || meeting.patch().bFace().isPresent()) {
      throw new JoineryException(
          "a leg needs the back of its face strip on the edge of its lapped strip, but "
              + a.id()
              + " and "
              + b.id()
              + " do not meet so");
    }
    Fastened fastened =
        screwed
            ? ThroughScrews.in(meeting, word(), fixings.glue(), fixings)
            : Brads.in(meeting, word(), a.thickness(), meeting.depthOfSecond(), fixings);
    Joined joined = meeting.joined(a, b, fastened);
    return screwed ? joined : Glue.needed(joined, fixings, meeting);
  }
}
