package sawstead.solid;

import java.util.Objects;

/**
 * One storey of a {@link Stack}.
 *
 * @param outline in (u, v), mm
 * @param height along w, mm
 */
public record Layer(Outline outline, double height) {
  /** Refuses a height that is none. */
  public Layer {
    Objects.requireNonNull(outline, "outline");
    if (!(height >= Panel.THINNEST && height <= Corner.REACH)) {
      throw new SolidException(
          "the height of a layer must lie between 0.001 mm and 100 m, found " + height);
    }
  }
}
