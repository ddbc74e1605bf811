package sawstead.walk;

import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * A small drawing of what to measure, for a terminal as for a window. Places are columns to the
 * right (0 to {@link #WIDE}) and lines downward (0 to {@link #HIGH}); a line is twice as high as a
 * column is wide.
 *
 * @param strokes what is drawn
 * @param arrow what is to be measured; empty if it is no length
 */
public record Drawing(List<Stroke> strokes, Optional<Stroke.Line> arrow) {
  /** Columns. */
  public static final int WIDE = 60;

  /** Lines. */
  public static final int HIGH = 14;

  /** One stroke of the pencil. */
  public sealed interface Stroke {
    /** From a place to another. */
    record Line(double fromX, double fromY, double toX, double toY) implements Stroke {}

    /** A box from its upper left corner. */
    record Box(double x, double y, double width, double height) implements Stroke {}

    /** A circle; its radius in lines. */
    record Round(double x, double y, double radius) implements Stroke {}

    /** A word that begins at a place. */
    record Word(double x, double y, String text) implements Stroke {
      /** Refuses nothing to read. */
      public Word {
        Objects.requireNonNull(text, "text");
      }
    }
  }

  /** Copies the list. */
  public Drawing {
    strokes = List.copyOf(strokes);
  }
}
