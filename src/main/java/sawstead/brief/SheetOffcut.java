package sawstead.brief;

import static java.util.Objects.requireNonNull;

import java.util.List;

/**
 * A rectangle left from earlier work.
 *
 * @param name what is pencilled on it
 * @param length along the face grain, mm
 * @param width across the face grain, mm
 * @param trim cut off each of its edges, mm
 * @param defects places that no panel may have
 */
public record SheetOffcut(
    String name, double length, double width, double trim, List<SheetDefect> defects) {
  public SheetOffcut {
    requireNonNull(name, "name");
    defects = List.copyOf(defects);
  }
}
