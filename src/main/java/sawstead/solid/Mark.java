package sawstead.solid;

import java.util.List;
import java.util.Objects;

/**
 * Pencil lines and points on a face. They take no material.
 *
 * @param text what the mark says, may be empty
 * @param face that is marked
 * @param strokes lines; a line without length is a point
 */
public record Mark(String text, Face face, List<Stroke> strokes) implements Feature {
  /**
   * A straight pencil line, mm.
   *
   * @param fromU one end
   * @param fromV one end
   * @param toU other end
   * @param toV other end
   */
  public record Stroke(double fromU, double fromV, double toU, double toV) {
    /** Refuses what is not a number. */
    public Stroke {
      Corner.of(fromU, fromV);
      Corner.of(toU, toV);
    }
  }

  /** Copies its strokes. */
  public Mark {
    Objects.requireNonNull(text, "text");
    Objects.requireNonNull(face, "face");
    strokes = List.copyOf(strokes);
  }

  @Override
  public String operation() {
    return "mark";
  }

  @Override
  public void demandFits(Outline outline, double thickness) {
    // A mark has no depth.
  }
}
