package sawstead.brief;

import static java.util.Objects.requireNonNull;

/**
 * A groove from point to point.
 *
 * @param from its start
 * @param to its end
 * @param width mm
 * @param depth mm
 * @param face the face it is cut from
 * @param roundEnds ends as a router leaves them, beyond the two points; else square, exactly at
 *     them
 */
public record GrooveCut(
    Point from, Point to, double width, double depth, CutFace face, boolean roundEnds)
    implements Cut {
  public GrooveCut {
    requireNonNull(from, "from");
    requireNonNull(to, "to");
    requireNonNull(face, "face");
  }
}
