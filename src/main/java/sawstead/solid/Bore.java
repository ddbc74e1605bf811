package sawstead.solid;

import java.util.List;
import java.util.Objects;

/**
 * A round hole square to a face.
 *
 * @param u centre, mm
 * @param v centre, mm
 * @param diameter mm
 * @param depth from the face, mm; of no meaning (0) when through
 * @param face from which it is bored
 * @param through true if it goes through the whole thickness
 */
public record Bore(double u, double v, double diameter, double depth, Face face, boolean through)
    implements Feature {
  /** Refuses a diameter or depth that is none. */
  public Bore {
    Objects.requireNonNull(face, "face");
    Outline.demandPositive("diameter of a bore", diameter);
    if (through) {
      depth = 0;
    } else {
      Outline.demandPositive("depth of a bore", depth);
    }
    Corner.of(u, v);
  }

  /** A blind bore. */
  public Bore(double u, double v, double diameter, double depth, Face face) {
    this(u, v, diameter, depth, face, false);
  }

  /** A bore through the whole thickness. */
  public static Bore through(double u, double v, double diameter) {
    return new Bore(u, v, diameter, 0, Face.FRONT, true);
  }

  /** Its circle on the face. */
  public Outline outline() {
    return Outline.circle(u, v, diameter);
  }

  @Override
  public String operation() {
    return "bore";
  }

  @Override
  public void demandFits(Outline panel, double thickness) {
    if (!through && depth >= thickness) {
      throw new SolidException(
          "a blind bore "
              + depth
              + " mm deep goes through a panel of "
              + thickness
              + " mm: make it shallower, or a bore through");
    }
  }

  @Override
  public List<Prism> removed(double thickness) {
    if (through) {
      return List.of(Prism.removed(outline(), 0, thickness));
    }
    return List.of(
        face == Face.FRONT
            ? Prism.removed(outline(), thickness - depth, thickness)
            : Prism.removed(outline(), 0, depth));
  }
}
