package sawstead.solid;

import java.util.Objects;

/**
 * A stepless slanted bore for a pocket screw. The solid keeps it as material (see {@link
 * Solid#uncut()}).
 *
 * @param at where the bore's axis meets the face, mm
 * @param direction of boring, into the panel; kept at length one
 * @param diameter mm
 * @param depth along the direction, mm
 */
public record PocketBore(Vec at, Vec direction, double diameter, double depth) implements Feature {
  /** Refuses a diameter, depth or direction that is none. */
  public PocketBore {
    Objects.requireNonNull(at, "at");
    direction = direction.unit();
    Outline.demandPositive("diameter of a pocket bore", diameter);
    Outline.demandPositive("depth of a pocket bore", depth);
  }

  @Override
  public String operation() {
    return "pocket-bore";
  }

  @Override
  public void demandFits(Outline outline, double thickness) {
    // Breaking through a face is a finding of the joinery rules, not an impossible solid.
  }

  @Override
  public boolean isUncut() {
    return true;
  }
}
