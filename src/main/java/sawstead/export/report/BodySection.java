package sawstead.export.report;

import java.io.IOException;
import sawstead.solid.Box;
import sawstead.solid.Panel;
import sawstead.solid.Solid;
import sawstead.station.Part;
import sawstead.station.Station;

/**
 * {@code bodies}: everything that takes up space. {@code length}, {@code width} and {@code
 * thickness} are the extents along the local u, v and w; for a panel u runs along the grain.
 */
final class BodySection {
  private BodySection() {}

  static void write(Station station, Json json) throws IOException {
    json.objects("bodies", station.parts().values(), part -> write(part, json));
  }

  static void write(Part part, Json json) throws IOException {
    Solid solid = part.body().solid();
    Box local = solid.box();
    json.text("id", part.id());
    json.text("kind", part.kind().word());
    json.textOrNull("stock", part.stock());
    // A panel's sizes are those of its blank, as it comes off the saw before anything is cut in it.
    boolean panel = solid instanceof Panel;
    json.number("thickness", panel ? ((Panel) solid).thickness() : local.size().z());
    json.number("length", panel ? ((Panel) solid).length() : local.size().x());
    json.number("width", panel ? ((Panel) solid).width() : local.size().y());
    json.number("volume", solid.volume());
    json.number("volumeExact", solid.volumeExact());
    json.number("mass", part.mass());
    json.texts("uncut", solid.uncut());
    json.vec("centroid", part.body().centroid());
    json.box("box", part.body().box());
    json.numbers("placement", part.body().placement().columnMajor());
    json.text("stl", "stl/" + part.id() + ".stl");
  }
}
