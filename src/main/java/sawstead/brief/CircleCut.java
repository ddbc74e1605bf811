package sawstead.brief;

import static java.util.Objects.requireNonNull;

import java.util.Optional;

/**
 * A round hole.
 *
 * @param at its centre
 * @param diameter mm
 * @param depth mm; absent for a through hole
 * @param face the face that a blind hole starts from
 */
public record CircleCut(Point at, double diameter, Optional<Double> depth, CutFace face)
    implements Cut {
  public CircleCut {
    requireNonNull(at, "at");
    requireNonNull(depth, "depth");
    requireNonNull(face, "face");
  }
}
