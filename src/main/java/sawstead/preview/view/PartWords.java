package sawstead.preview.view;

import sawstead.check.Words;
import sawstead.solid.Panel;
import sawstead.solid.Vec;
import sawstead.station.Part;
import sawstead.station.Station;

/**
 * A body in two lines: its id, then its size as one would measure it.
 *
 * @param station that it belongs to
 */
record PartWords(Station station) {
  String of(String id) {
    Part part = station.parts().get(id);
    if (part == null) {
      return id;
    }
    Words words = new Words(station.brief().units());
    String size;
    if (part.body().solid() instanceof Panel panel && part.stock().isPresent()) {
      size =
          words.length(panel.length())
              + " \u00d7 "
              + words.length(panel.width())
              + " \u00d7 "
              + words.length(panel.thickness())
              + "  "
              + part.stock().get();
    } else {
      Vec box = part.body().box().size();
      size =
          words.length(box.x())
              + " wide, "
              + words.length(box.y())
              + " deep, "
              + words.length(box.z())
              + " high";
    }
    return id + "\n" + size;
  }
}
