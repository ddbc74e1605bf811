package sawstead.solid;

import java.util.List;
import java.util.Objects;
import java.util.Set;

/**
 * A flat-bottomed cut that does not go through.
 *
 * @param operation one of {@link #OPERATIONS}
 * @param outline edge of the recess; it may reach beyond the panel
 * @param depth from the face, mm; less than the panel's thickness
 * @param face from which it is cut
 */
public record Recess(String operation, Outline outline, double depth, Face face)
    implements Feature {
  /** What the trade calls flat-bottomed cuts; the shape is the same for all. */
  public static final Set<String> OPERATIONS =
      Set.of("groove", "dado", "rabbet", "recess", "relief");

  /** Refuses an unknown operation and a depth that is none. */
  public Recess {
    Objects.requireNonNull(outline, "outline");
    Objects.requireNonNull(face, "face");
    if (!OPERATIONS.contains(operation)) {
      throw new SolidException(
          "a recess is one of groove, dado, rabbet, recess or relief, found " + operation);
    }
    Outline.demandPositive("depth of a " + operation, depth);
  }

  @Override
  public void demandFits(Outline panel, double thickness) {
    if (depth >= thickness) {
      throw new SolidException(
          "a "
              + operation
              + " "
              + depth
              + " mm deep goes through a panel of "
              + thickness
              + " mm: make it shallower, or an opening");
    }
  }

  @Override
  public List<Prism> removed(double thickness) {
    return List.of(
        face == Face.FRONT
            ? Prism.removed(outline, thickness - depth, thickness)
            : Prism.removed(outline, 0, depth));
  }
}
