package sawstead.brief;

import static java.util.Objects.requireNonNull;

import java.util.List;
import java.util.Optional;
import sawstead.measure.Measured;

/**
 * A drawer that is to be built. An empty wish is decided by the design.
 *
 * @param id first word of its parts' ids
 * @param in where it runs
 * @param sheet of box, front and case
 * @param floorSheet of its floor
 * @param slide thickness of the slide on either side, mm
 * @param width of the box across, mm
 * @param height of the box, mm
 * @param travel how far it comes out, mm
 * @param caseWidth of its own case, outside, mm
 * @param caseDepth mm
 * @param caseHeight mm
 * @param contents what is kept in it
 */
public record DrawerWish(
    String id,
    DrawerPlace in,
    String sheet,
    String floorSheet,
    Measured slide,
    Optional<Measured> width,
    Optional<Measured> height,
    Optional<Measured> travel,
    Measured caseWidth,
    Measured caseDepth,
    Measured caseHeight,
    List<Content> contents) {
  public DrawerWish {
    requireNonNull(id, "id");
    requireNonNull(in, "in");
    requireNonNull(sheet, "sheet");
    requireNonNull(floorSheet, "floorSheet");
    requireNonNull(slide, "slide");
    requireNonNull(width, "width");
    requireNonNull(height, "height");
    requireNonNull(travel, "travel");
    requireNonNull(caseWidth, "caseWidth");
    requireNonNull(caseDepth, "caseDepth");
    requireNonNull(caseHeight, "caseHeight");
    contents = List.copyOf(contents);
  }
}
