package sawstead.solid;

import java.util.List;
import java.util.Objects;

/**
 * A cut through the whole thickness.
 *
 * @param outline edge of the opening; it may reach beyond the panel
 */
public record Opening(Outline outline) implements Feature {
  /** Refuses a missing outline. */
  public Opening {
    Objects.requireNonNull(outline, "outline");
  }

  @Override
  public String operation() {
    return "opening";
  }

  @Override
  public void demandFits(Outline panel, double thickness) {
    // Whatever an opening leaves is a panel, unless it leaves nothing: the slabs refuse that.
  }

  @Override
  public List<Prism> removed(double thickness) {
    return List.of(Prism.removed(outline, 0, thickness));
  }
}
