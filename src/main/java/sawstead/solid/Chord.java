package sawstead.solid;

import java.util.List;

/**
 * A stretch of a line in material.
 *
 * @param from parameter where the line enters, mm from the line's point
 * @param to parameter where it leaves, mm
 */
public record Chord(double from, double to) {
  /** Length in material, mm. */
  public double length() {
    return to - from;
  }

  /**
   * Where a line runs in a body, sorted and disjoint. Stretches nearer than 2^-18 mm are one.
   *
   * @param body whose material is asked for
   * @param from point of the line, parameter 0, mm
   * @param direction of growing parameter, any length but zero
   */
  public static List<Chord> along(Body body, Vec from, Vec direction) {
    return Chords.along(body, from, direction.unit());
  }
}
