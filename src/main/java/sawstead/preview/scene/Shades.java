package sawstead.preview.scene;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import javafx.scene.DepthTest;
import javafx.scene.Group;
import javafx.scene.Node;
import javafx.scene.image.Image;
import javafx.scene.image.PixelWriter;
import javafx.scene.image.WritableImage;
import javafx.scene.paint.Color;
import javafx.scene.paint.PhongMaterial;
import javafx.scene.shape.CullFace;
import javafx.scene.shape.MeshView;
import javafx.scene.transform.Affine;
import sawstead.preview.look.Tokens;
import sawstead.solid.Body;
import sawstead.solid.Mesh;
import sawstead.solid.Placement;
import sawstead.solid.Vec;
import sawstead.station.Mover;
import sawstead.station.Part;
import sawstead.station.Station;

/**
 * What is no body of the station and is drawn all the same: what two bodies share, the way of what
 * moves, the room of a tool.
 */
final class Shades {
  private static final int TILE = 32;

  /** Edge of a tile of the hatching, mm. */
  private static final double HATCH = 26;

  /** In how many places a moving part is shown along its way. */
  private static final int GHOSTS = 18;

  private static final double GHOST = 0.075;
  private static final double TOOL = 0.42;

  private final Group shared = new Group();
  private final Group path = new Group();
  private final Group tools = new Group();
  private final Group all = new Group(path, tools, shared);
  private final PhongMaterial hatched = new PhongMaterial();
  private final PhongMaterial ghost;
  private final PhongMaterial tool;
  private List<Body> held = List.of();
  private Way way;

  Shades(Tokens look) {
    Color stop = look.colour("vermilion");
    // It glows and takes no light: with both, a pale vermilion becomes white.
    hatched.setDiffuseColor(Color.BLACK);
    hatched.setSelfIlluminationMap(hatching(stop, stop.interpolate(look.colour("card"), 0.62)));
    ghost = thin(look.colour("cobalt"), GHOST);
    tool = thin(look.colour("lichen"), TOOL);
    all.setMouseTransparent(true);
  }

  Node node() {
    return all;
  }

  /** Vermilion and hatched, and seen through everything that is before it. */
  void share(List<Mesh> meshes) {
    shared.getChildren().clear();
    for (Mesh mesh : meshes) {
      MeshView view = hatch(mesh);
      view.setMaterial(hatched);
      view.setDepthTest(DepthTest.DISABLE);
      shared.getChildren().add(view);
    }
  }

  /** What the swept way was last drawn of: the motion, and the bodies that make it. */
  private record Way(Mover mover, List<PartMeshes> moving) {}

  /**
   * The way of what moves, in so many places from its first to its last. Drawn again only when the
   * motion or a body has changed, and then with the same nodes.
   */
  void path(Mover mover, Station station, Function<String, Optional<PartMeshes>> meshes) {
    List<PartMeshes> moving =
        Stream.concat(mover.setting().guests().stream().map(Part::id), mover.moves().stream())
            .flatMap(id -> meshes.apply(id).stream())
            .toList();
    Way wanted = new Way(mover, moving);
    if (wanted.equals(way)) {
      return;
    }
    way = wanted;
    List<Node> ghosts = path.getChildren();
    int drawn = 0;
    for (PartMeshes part : moving) {
      boolean guest = station.part(part.part().id()).isEmpty();
      for (int k = 0; k <= GHOSTS; k++) {
        double share = (double) k / GHOSTS;
        double from = mover.motion().from();
        Placement by = mover.motion().at(from + (mover.motion().to() - from) * share);
        by = guest ? by : by.after(mover.setting().set());
        for (Triangles side : List.of(part.faces(), part.edges())) {
          MeshView view = drawn < ghosts.size() ? (MeshView) ghosts.get(drawn) : ghost();
          view.setMesh(side.mesh());
          view.getTransforms().setAll(affine(by.after(part.part().body().placement())));
          drawn++;
        }
      }
    }
    ghosts.subList(drawn, ghosts.size()).clear();
  }

  private MeshView ghost() {
    MeshView view = new MeshView();
    view.setCullFace(CullFace.BACK);
    view.setMaterial(ghost);
    path.getChildren().add(view);
    return view;
  }

  void noPath() {
    way = null;
    path.getChildren().clear();
  }

  void tools(List<Body> bodies) {
    if (bodies.equals(held)) {
      return;
    }
    held = List.copyOf(bodies);
    tools.getChildren().clear();
    for (Body body : bodies) {
      MeshView view = plain(body.solid().mesh());
      view.setMaterial(tool);
      view.getTransforms().setAll(affine(body.placement()));
      tools.getChildren().add(view);
    }
  }

  int sharedCount() {
    return shared.getChildren().size();
  }

  int toolCount() {
    return tools.getChildren().size();
  }

  int pathCount() {
    return path.getChildren().size();
  }

  static Affine affine(Placement at) {
    Vec u = at.u();
    Vec v = at.v();
    Vec w = at.w();
    Vec o = at.origin();
    return new Affine(
        u.x(), v.x(), w.x(), o.x(), u.y(), v.y(), w.y(), o.y(), u.z(), v.z(), w.z(), o.z());
  }

  private static MeshView plain(Mesh mesh) {
    Triangles triangles = new Triangles();
    for (int t = 0; t < mesh.triangleCount(); t++) {
      for (int k = 0; k < 3; k++) {
        triangles.corner(mesh.vertex(mesh.corner(t, k)), 0, 0);
      }
    }
    return triangles.view();
  }

  private static MeshView hatch(Mesh mesh) {
    Triangles triangles = new Triangles();
    for (int t = 0; t < mesh.triangleCount(); t++) {
      Vec n = mesh.normal(t);
      boolean level = Math.abs(n.z()) > 0.7;
      for (int k = 0; k < 3; k++) {
        Vec p = mesh.vertex(mesh.corner(t, k));
        double along = level || Math.abs(n.y()) > 0.7 ? p.x() : p.y();
        triangles.corner(p, along / HATCH, (level ? p.y() : p.z()) / HATCH);
      }
    }
    MeshView view = triangles.view();
    return view;
  }

  private static PhongMaterial thin(Color colour, double share) {
    PhongMaterial material =
        new PhongMaterial(
            Color.color(
                colour.getRed() * share,
                colour.getGreen() * share,
                colour.getBlue() * share,
                share));
    material.setSpecularColor(Color.BLACK);
    return material;
  }

  private static Image hatching(Color dark, Color pale) {
    WritableImage image = new WritableImage(TILE, TILE);
    PixelWriter pixels = image.getPixelWriter();
    for (int y = 0; y < TILE; y++) {
      for (int x = 0; x < TILE; x++) {
        pixels.setColor(x, y, (x + y) % (TILE / 2) < TILE / 4 ? dark : pale);
      }
    }
    return image;
  }
}
