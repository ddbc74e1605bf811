package sawstead.solid;

import java.util.Objects;

/**
 * A hole bored into an edge. The solid keeps it as material (see {@link Solid#uncut()}).
 *
 * @param at where the drill enters, mm
 * @param direction of boring, into the panel; kept at length one
 * @param diameter mm
 * @param depth along the direction, mm
 */
public record EdgeBore(Vec at, Vec direction, double diameter, double depth) implements Feature {
  /** Refuses a diameter, depth or direction that is none. */
  public EdgeBore {
    Objects.requireNonNull(at, "at");
    direction = direction.unit();
    Outline.demandPositive("diameter of an edge bore", diameter);
    Outline.demandPositive("depth of an edge bore", depth);
  }

  @Override
  public String operation() {
    return "edge-bore";
  }

  @Override
  public void demandFits(Outline outline, double thickness) {
    if (diameter >= thickness) {
      throw new SolidException(
          "a bore of " + diameter + " mm does not fit the edge of a panel of " + thickness + " mm");
    }
  }

  @Override
  public boolean isUncut() {
    return true;
  }
}
