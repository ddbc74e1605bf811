package sawstead.book;

import sawstead.solid.Mesh;
import sawstead.solid.Placement;
import sawstead.solid.Vec;
import sawstead.station.Part;

/**
 * A solid where it is drawn.
 *
 * @param mesh in the frame of the station
 * @param tone how it is drawn
 */
record Shown(Mesh mesh, Tone tone) {
  /**
   * A part away from its place.
   *
   * @param by how far, mm
   */
  static Shown of(Part part, Vec by, Tone tone) {
    Placement there = Placement.at(by).after(part.body().placement());
    return new Shown(part.body().solid().mesh().placed(there), tone);
  }
}
