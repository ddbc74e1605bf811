package sawstead.joinery;

import sawstead.solid.Axis;

/**
 * Two boards that touch, told apart by what they do in a joint.
 *
 * @param first the board that keeps the head, or whose end is let in
 * @param second the other one
 * @param patch seen from the first
 * @param swapped true if the first is the caller's b
 */
record Meeting(Board first, Board second, Patch patch, boolean swapped) {

  /** As the caller gave them. */
  static Meeting of(Board a, Board b, String word) {
    Patch patch =
        Patch.between(a, b)
            .orElseThrow(
                () ->
                    new JoineryException(
                        "a "
                            + word
                            + " joint needs two square boards that touch face to face or edge, but "
                            + a.id()
                            + " in "
                            + a.box()
                            + " and "
                            + b.id()
                            + " in "
                            + b.box()
                            + " do not"));
    return new Meeting(a, b, patch, false);
  }

  /** The first board meets with a face: a as given if both do. */
  static Meeting faceFirst(Board a, Board b, String word) {
    Meeting given = of(a, b, word);
    if (given.patch.aFace().isPresent()) {
      return given;
    }
    if (given.patch.bFace().isPresent()) {
      return given.turned();
    }
    throw new JoineryException(
        "a "
            + word
            + " joint goes through a face, but "
            + a.id()
            + " and "
            + b.id()
            + " meet edge to edge");
  }

  /** The first board meets with an edge: a as given if both do. */
  static Meeting edgeFirst(Board a, Board b, String word) {
    Meeting given = of(a, b, word);
    if (given.patch.aFace().isEmpty()) {
      return given;
    }
    if (given.patch.bFace().isEmpty()) {
      return given.turned();
    }
    throw new JoineryException(
        "a "
            + word
            + " joint needs an edge against a face, but "
            + a.id()
            + " and "
            + b.id()
            + " meet face to face");
  }

  /** As {@link #edgeFirst}, and the second meets with a face. */
  static Meeting edgeOnFace(Board a, Board b, String word) {
    Meeting meeting = edgeFirst(a, b, word);
    if (meeting.patch.bFace().isEmpty()) {
      throw new JoineryException(
          "a "
              + word
              + " joint needs an edge against a face, but "
              + a.id()
              + " and "
              + b.id()
              + " meet edge to edge");
    }
    return meeting;
  }

  /** True if the second board meets with an edge. */
  boolean intoEdge() {
    return patch.bFace().isEmpty();
  }

  /** True if the first board's face lies on the second's face. */
  boolean isLap() {
    return patch.aFace().isPresent() && patch.bFace().isPresent();
  }

  /** Wood of the second board in line with the patch's normal, mm. */
  double depthOfSecond() {
    return second.box().size().along(patch.normal());
  }

  /**
   * Axis along which fasteners stand in a row: along an edge, or along the longer side of a lap.
   */
  Axis rowAxis() {
    if (patch.bFace().isEmpty()) {
      return Heading.third(patch.normal(), second.through());
    }
    return patch.aFace().isEmpty()
        ? Heading.third(patch.normal(), first.through())
        : patch.longAxis();
  }

  /** Words for where the joint is. */
  String where() {
    return first.id() + " on " + second.id();
  }

  /** The boards in the caller's order. */
  Joined joined(Board newFirst, Board newSecond, Fastened fastened) {
    Joined joined = Joined.of(newFirst, newSecond, fastened);
    return swapped ? joined.swapped() : joined;
  }

  /** The same meeting between boards that have changed. */
  Meeting with(Board newFirst, Board newSecond) {
    return new Meeting(newFirst, newSecond, patch, swapped);
  }

  private Meeting turned() {
    return new Meeting(second, first, patch.reversed(), !swapped);
  }
}
