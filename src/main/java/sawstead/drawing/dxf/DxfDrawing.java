package sawstead.drawing.dxf;

import java.util.List;

/**
 * Things on layers.
 *
 * @param things in drawing order; at least one
 */
public record DxfDrawing(List<Drawn> things) {
  /** Refuses an empty drawing. */
  public DxfDrawing {
    things = List.copyOf(things);
    if (things.isEmpty()) {
      throw new IllegalArgumentException("nothing is drawn");
    }
  }

  /** Bounds of all things, mm. */
  public Extents extents() {
    return things.stream().map(Drawn::extents).reduce(Extents::with).orElseThrow();
  }

  /** The layers in use, each once, in drawing order. */
  List<Layer> layers() {
    return things.stream().map(Drawn::layer).distinct().toList();
  }
}
