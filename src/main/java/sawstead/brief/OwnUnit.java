package sawstead.brief;

import static java.util.Objects.requireNonNull;

/**
 * A unit of the user's own, used from a brief.
 *
 * @param id first word of the ids of its bodies
 * @param file the unit's file, as the brief names it
 * @param design what draws it
 */
public record OwnUnit(String id, String file, OwnDesign design) {
  public OwnUnit {
    requireNonNull(id, "id");
    requireNonNull(file, "file");
    requireNonNull(design, "design");
  }
}
