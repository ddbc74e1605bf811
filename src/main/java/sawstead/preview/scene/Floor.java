package sawstead.preview.scene;

import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import javafx.geometry.Point3D;
import javafx.scene.AmbientLight;
import javafx.scene.DirectionalLight;
import javafx.scene.Group;
import javafx.scene.Node;
import javafx.scene.paint.Color;
import javafx.scene.shape.MeshView;
import sawstead.preview.look.Tokens;
import sawstead.solid.Body;
import sawstead.solid.Box;
import sawstead.solid.Mesh;
import sawstead.solid.Placement;
import sawstead.station.Mover;
import sawstead.station.PartKind;
import sawstead.station.Station;

/**
 * A station on its floor, lit. To be used on JavaFX's own thread once it is part of a window;
 * before that on any.
 */
public final class Floor {
  private final Tokens look;
  private final Materials materials;
  private final Map<String, PartShape> shapes = new TreeMap<>();
  private final Group root = new Group();
  private final MeshView ground = new MeshView();
  private final Shades shades;
  private Scenery scenery;
  private Station station;
  private BuildOrder order;
  private Arrangement arrangement = Arrangement.REST;
  private Map<String, Glow> glows = Map.of();
  private boolean seeThrough;
  private Section section = Section.NONE;

  /**
   * Builds the scene of a station.
   *
   * @param station what to show
   * @param look light or dark
   */
  public Floor(Station station, Tokens look) {
    this(Scenery.of(station, look));
  }

  /** Builds a scene that was made ready. */
  public Floor(Scenery scenery) {
    look = scenery.look();
    materials = Materials.of(look);
    shades = new Shades(look);
    root.getChildren().addAll(lights(look));
    root.getChildren().add(ground);
    follow(scenery);
  }

  /**
   * Shows another scenery of the same look in the same arrangement. Only what differs from the one
   * before is touched.
   */
  public void follow(Scenery next) {
    boolean first = scenery == null;
    if (first || scenery.ground() != next.ground()) {
      next.ground().lay(ground);
    }
    scenery = next;
    station = next.station();
    if (order == null || !order.fits(station)) {
      order = BuildOrder.of(station);
    }
    boolean same = shapes.keySet().equals(next.meshes().keySet());
    shapes.keySet().retainAll(next.meshes().keySet());
    next.meshes()
        .forEach(
            (id, meshes) -> {
              PartShape shape = shapes.get(id);
              if (shape == null) {
                shapes.put(id, new PartShape(meshes, materials));
              } else {
                shape.become(meshes);
              }
            });
    if (!same) {
      light(glows);
      sortShapes();
    }
    arrange(arrangement);
  }

  /** Light or dark. */
  public Tokens look() {
    return look;
  }

  /** What to put into a scene. */
  public Group root() {
    return root;
  }

  /** What is shown. */
  public Station station() {
    return station;
  }

  /**
   * Takes over what was only found while the same station was checked: further motions, and the
   * order in which it is built.
   */
  public void know(Station judged, BuildOrder found) {
    if (judged.parts().equals(station.parts())) {
      station = judged;
      order = found.fits(station) ? found : order;
    }
  }

  /** In which order it is built, as far as is known. */
  public BuildOrder order() {
    return order;
  }

  /** How it stands. */
  public Arrangement arrangement() {
    return arrangement;
  }

  /** Boxes around all bodies that are shown, where they now are; never empty. */
  public List<Box> boxes() {
    List<Box> boxes =
        Stream.concat(station.parts().values().stream(), Scenery.guests(station).stream())
            .flatMap(
                p -> arrangement.of(p, station, order).stream().map(by -> p.body().moved(by).box()))
            .toList();
    return boxes.isEmpty() ? List.of(Arrangement.box(station)) : boxes;
  }

  /** Boxes around all bodies in their places and where each begins to come to it. */
  public List<Box> boxesOfTheBuild() {
    return station.parts().values().stream()
        .filter(p -> !p.isRoom())
        .flatMap(
            p ->
                order.bringing(p.id()).stream()
                    .map(c -> p.body().moved(Placement.at(c.away(0))).box().union(p.body().box())))
        .toList();
  }

  /** Opens, spreads or unbuilds. */
  public void arrange(Arrangement wanted) {
    arrangement = wanted;
    for (PartShape shape : shapes.values()) {
      var by = wanted.of(shape.part(), station, order);
      shape.node().setVisible(by.isPresent());
      shape.place(by.orElse(Placement.identity()));
    }
    if (section.axis().isPresent()) {
      cut(section);
    }
  }

  /** Cuts everything open, as it now stands. */
  public void cut(Section wanted) {
    section = wanted;
    shapes.values().forEach(s -> s.cut(wanted));
  }

  /** Lights up bodies by id, and no others. */
  public void light(Map<String, Glow> wanted) {
    glows = new HashMap<>(wanted);
    shapes.values().forEach(this::dress);
  }

  /** Makes envelopes (what takes up space but is not cut) see-through, or solid again. */
  public void seeThrough(boolean wanted) {
    seeThrough = wanted;
    shapes.values().forEach(this::dress);
    sortShapes();
  }

  /** A body where it now stands; empty if there is none, or it is not built yet. */
  public Optional<Body> body(String id) {
    return Optional.ofNullable(shapes.get(id))
        .map(PartShape::part)
        .flatMap(p -> arrangement.of(p, station, order).map(by -> p.body().moved(by)));
  }

  /** Draws what is shared by bodies, and nothing that was drawn so before. */
  public void share(List<Mesh> meshes) {
    shades.share(meshes);
  }

  /** Draws the way of what moves; empty draws none. */
  public void path(Optional<Mover> mover) {
    mover.ifPresentOrElse(m -> shades.path(m, station, this::meshes), shades::noPath);
  }

  private Optional<PartMeshes> meshes(String id) {
    return Optional.ofNullable(shapes.get(id)).map(PartShape::meshes);
  }

  /** Draws the room that tools take up. */
  public void tools(List<Body> bodies) {
    shades.tools(bodies);
  }

  /** How many solids are drawn of what bodies share. */
  public int sharedCount() {
    return shades.sharedCount();
  }

  /** How many places of the way of what moves are drawn. */
  public int pathCount() {
    return shades.pathCount();
  }

  /** How many bodies of tools are drawn. */
  public int toolCount() {
    return shades.toolCount();
  }

  /** Shows only these bodies; an empty set shows all that are there. */
  public void only(Set<String> ids) {
    shapes.forEach(
        (id, shape) ->
            shape
                .node()
                .setVisible(
                    ids.isEmpty()
                        ? arrangement.of(shape.part(), station, order).isPresent()
                        : ids.contains(id)));
  }

  /** Takes the ground away, so that bodies alone are seen. */
  void bare() {
    ground.setVisible(false);
  }

  /** The id of the body that a picked node belongs to; null if to none. */
  public static String idOf(Node picked) {
    for (Node node = picked; node != null; node = node.getParent()) {
      if (node.getUserData() instanceof String id) {
        return id;
      }
    }
    return null;
  }

  private void dress(PartShape shape) {
    shape.light(glows.getOrDefault(shape.part().id(), Glow.NONE), isSeenThrough(shape));
  }

  private boolean isSeenThrough(PartShape shape) {
    return seeThrough
        && shape.part().kind() == PartKind.ENVELOPE
        && station.parts().containsKey(shape.part().id());
  }

  /** JavaFX blends in the order of drawing, so what is seen through comes last. */
  private void sortShapes() {
    List<Node> nodes =
        shapes.values().stream()
            .sorted(Comparator.comparing(s -> s.isClear() || isSeenThrough(s)))
            .map(s -> (Node) s.node())
            .toList();
    root.getChildren().removeIf(n -> n instanceof Group);
    root.getChildren().addAll(nodes);
    root.getChildren().add(shades.node());
  }

  private static List<Node> lights(Tokens look) {
    double dim = look.dark() ? 0.86 : 1;
    return List.of(
        new AmbientLight(Color.gray(0.50 * dim)),
        light(Color.color(0.46, 0.44, 0.41), 0.45, 0.62, -0.85, dim),
        light(Color.color(0.24, 0.24, 0.25), -0.85, 0.25, -0.35, dim),
        light(Color.color(0.30, 0.30, 0.31), 0.25, -0.9, -0.30, dim));
  }

  private static DirectionalLight light(Color colour, double x, double y, double z, double dim) {
    DirectionalLight light = new DirectionalLight(colour.interpolate(Color.BLACK, 1 - dim));
    light.setDirection(new Point3D(x, y, z));
    return light;
  }
}
