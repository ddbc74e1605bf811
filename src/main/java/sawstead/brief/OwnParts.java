package sawstead.brief;

import java.util.List;

/**
 * What a unit of the user's own consists of, with every formula worked out. Ids are whole: {@code
 * rack/side-left}. Lengths mm, station frame.
 *
 * @param panels to be cut
 * @param bodies bought or kept in it
 * @param joints in order
 * @param motions what moves
 * @param touches pairs of ids that are meant to touch
 * @param steps in order; empty for one step that places everything
 * @param remarks what it has to say about these dimensions
 */
public record OwnParts(
    List<ExtraPanel> panels,
    List<OwnBody> bodies,
    List<OwnJoint> joints,
    List<OwnMotion> motions,
    List<List<String>> touches,
    List<OwnStep> steps,
    List<OwnRemark> remarks) {
  public OwnParts {
    panels = List.copyOf(panels);
    bodies = List.copyOf(bodies);
    joints = List.copyOf(joints);
    motions = List.copyOf(motions);
    touches = touches.stream().map(List::copyOf).toList();
    steps = List.copyOf(steps);
    remarks = List.copyOf(remarks);
  }

  /**
   * An upright box that is not cut from a sheet.
   *
   * @param id whole
   * @param bought whether it is hardware rather than something kept
   * @param at its corner with the smallest coordinates, mm
   * @param size mm
   * @param mass kg
   */
  public record OwnBody(String id, boolean bought, Place at, Place size, double mass) {}

  /**
   * A joint between two panels.
   *
   * @param kind how
   * @param from the panel that is fixed
   * @param into the panel that it is fixed to
   * @param removable whether it must come off again: never glued
   * @param face the face of {@code from} that pockets are in
   */
  public record OwnJoint(
      JointKind kind, String from, String into, boolean removable, CutFace face) {}

  /**
   * A motion: a slide along {@code direction}, or a turn about the axis through {@code at}.
   *
   * @param id whole
   * @param moves ids
   * @param at a point of the axis; nothing for a slide
   * @param direction of the slide or the axis
   * @param from first parameter, mm or degrees; it rests at 0
   * @param to last parameter
   * @param touches ids that may be touched on the way
   */
  public record OwnMotion(
      String id,
      List<String> moves,
      java.util.Optional<Place> at,
      Place direction,
      double from,
      double to,
      List<String> touches) {
    public OwnMotion {
      moves = List.copyOf(moves);
      touches = List.copyOf(touches);
    }
  }

  /**
   * A step of the build.
   *
   * @param places ids
   * @param fixing how, in words
   * @param direction along which it comes
   * @param cautions one sentence each
   */
  public record OwnStep(
      List<String> places, String fixing, Place direction, List<String> cautions) {
    public OwnStep {
      places = List.copyOf(places);
      cautions = List.copyOf(cautions);
    }
  }

  /**
   * A demand that these dimensions do not meet.
   *
   * @param stops whether nothing may be cut
   * @param says what is so
   * @param remedy what to do
   */
  public record OwnRemark(boolean stops, String says, String remedy) {}
}
