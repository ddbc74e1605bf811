package sawstead.brief;

import java.util.List;

/**
 * A through opening.
 *
 * @param outline corners, mm
 */
public record OpeningCut(List<Point> outline) implements Cut {
  public OpeningCut {
    outline = List.copyOf(outline);
  }
}
