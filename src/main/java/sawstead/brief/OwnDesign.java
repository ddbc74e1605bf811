package sawstead.brief;

import java.util.Map;
import java.util.Set;

/**
 * Draws a unit of the user's own from the dimensions of the station. The reader of unit files makes
 * one; whoever prefers Java implements {@code sawstead.station.Unit} instead.
 */
@FunctionalInterface
public interface OwnDesign {

  /**
   * Names of the groups that a design is given:
   *
   * <ul>
   *   <li>{@code saw}, {@code vac}: what the brief says of them, under the names of its keys;
   *   <li>{@code stock}: the sheets by name;
   *   <li>{@code solved}: heights and outlines of the station;
   *   <li>{@code body}: the box of each body that was placed before, by its id.
   * </ul>
   */
  Set<String> GROUPS = Set.of("saw", "vac", "stock", "solved", "body");

  /**
   * Draws the unit.
   *
   * @param names by group: maps from names to numbers (mm, kg, degrees), words or further maps; a
   *     group is empty where the brief has nothing of it
   * @throws OwnUnitException if the unit cannot be drawn with these dimensions
   */
  OwnParts drawn(Map<String, Object> names) throws OwnUnitException;
}
