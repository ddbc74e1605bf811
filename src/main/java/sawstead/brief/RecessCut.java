package sawstead.brief;

import static java.util.Objects.requireNonNull;

import java.util.List;

/**
 * A recess.
 *
 * @param outline corners, mm
 * @param depth mm
 * @param face the face it is cut from
 */
public record RecessCut(List<Point> outline, double depth, CutFace face) implements Cut {
  public RecessCut {
    outline = List.copyOf(outline);
    requireNonNull(face, "face");
  }
}
