package sawstead.solid;

import java.util.ArrayList;
import java.util.List;

/**
 * Layers piled along w from 0: stacked cylinders, stepped boxes. One closed mesh.
 *
 * @param layers from the lowest up, at least one
 */
public record Stack(List<Layer> layers) implements Solid {
  /** Refuses a stack of nothing. */
  public Stack {
    layers = List.copyOf(layers);
    if (layers.isEmpty()) {
      throw new SolidException("a stack needs at least one layer");
    }
  }

  /** Height of all layers, mm. */
  public double height() {
    return layers.stream().mapToDouble(Layer::height).sum();
  }

  @Override
  public List<String> uncut() {
    return List.of();
  }

  @Override
  public List<Prism> prisms() {
    List<Prism> prisms = new ArrayList<>();
    double w = 0;
    for (Layer layer : layers) {
      prisms.add(Prism.added(layer.outline(), w, w + layer.height()));
      w += layer.height();
    }
    return prisms;
  }

  @Override
  public List<Plane> planes() {
    return List.of();
  }
}
