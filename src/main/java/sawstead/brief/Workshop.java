package sawstead.brief;

import static java.util.Objects.requireNonNull;

import java.util.List;

/**
 * What is at hand.
 *
 * @param screws screws by gauge and length
 * @param holeSaws diameters, mm, ascending
 * @param glue whether there is glue
 * @param brads brads at hand
 * @param router what cuts the relief grooves
 */
public record Workshop(
    List<ScrewStock> screws, List<Double> holeSaws, boolean glue, Brads brads, Router router) {
  public Workshop {
    screws = List.copyOf(screws);
    holeSaws = List.copyOf(holeSaws);
    requireNonNull(brads, "brads");
    requireNonNull(router, "router");
  }
}
