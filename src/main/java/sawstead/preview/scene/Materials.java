package sawstead.preview.scene;

import java.util.EnumMap;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import javafx.scene.image.Image;
import javafx.scene.paint.Color;
import javafx.scene.paint.Material;
import javafx.scene.paint.PhongMaterial;
import sawstead.preview.look.Tokens;

/** Materials of one look, made once and shared by all bodies. */
final class Materials {
  private static final double CLEAR = 0.26;
  private static final Map<Boolean, Materials> ALL = new ConcurrentHashMap<>();

  private final Tokens look;
  private final Image face;
  private final Map<Integer, Image> edges = new ConcurrentHashMap<>();
  private final Map<String, Material> made = new ConcurrentHashMap<>();
  private final Map<Stuff, Color> colours = new EnumMap<>(Stuff.class);

  /** The materials of a look; made when first asked for, on whatever thread that is. */
  static Materials of(Tokens look) {
    return ALL.computeIfAbsent(look.dark(), dark -> new Materials(look));
  }

  private Materials(Tokens look) {
    this.look = look;
    face = Grain.face(look);
    for (Stuff stuff : Stuff.values()) {
      colours.put(stuff, look.colour(stuff.token()));
    }
  }

  /** Face of a panel. */
  Material face(Glow glow) {
    return made.computeIfAbsent("face " + glow, k -> wood(face, glow));
  }

  /** Edge of a sheet of that thickness, mm: plies of about 1.4 mm, an odd number of them. */
  Material edge(double thickness, Glow glow) {
    int plies = Math.max(3, 2 * (int) Math.round((thickness / 1.4 - 1) / 2) + 1);
    Image image = edges.computeIfAbsent(plies, n -> Grain.edge(look, n));
    return made.computeIfAbsent("edge " + plies + glow, k -> wood(image, glow));
  }

  /** Metal and plastic. */
  Material of(Stuff stuff, boolean seeThrough, Glow glow) {
    boolean clear = seeThrough || stuff == Stuff.CLEAR;
    return made.computeIfAbsent(
        stuff + " " + clear + glow,
        k -> {
          Color colour = glow.over(colours.get(stuff), look);
          PhongMaterial material = new PhongMaterial(clear ? thinned(colour) : colour);
          boolean shiny = stuff == Stuff.STEEL || stuff == Stuff.BRASS || stuff == Stuff.IRON;
          material.setSpecularColor(clear ? Color.BLACK : Color.gray(shiny ? 0.35 : 0.1));
          material.setSpecularPower(shiny ? 24 : 10);
          return material;
        });
  }

  /** The thin dark line along an edge. */
  Material line() {
    return made.computeIfAbsent(
        "line", k -> new PhongMaterial(look.colour("ply-dark").interpolate(Color.BLACK, 0.62)));
  }

  /** JavaFX adds a 3D colour to what is behind it as it is, so it has to be thinned beforehand. */
  private static Color thinned(Color colour) {
    return Color.color(
        colour.getRed() * CLEAR, colour.getGreen() * CLEAR, colour.getBlue() * CLEAR, CLEAR);
  }

  private Material wood(Image image, Glow glow) {
    PhongMaterial material = new PhongMaterial(glow.over(Color.WHITE, look));
    material.setDiffuseMap(image);
    material.setSpecularColor(Color.gray(0.05));
    material.setSpecularPower(8);
    return material;
  }
}
