package sawstead.book;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import sawstead.check.FastenerWords;
import sawstead.check.Words;
import sawstead.drawing.page.Fractions;
import sawstead.measure.LengthFormat;
import sawstead.measure.Unit;
import sawstead.solid.Bevel;
import sawstead.solid.Bore;
import sawstead.solid.Box;
import sawstead.solid.EdgeBore;
import sawstead.solid.Face;
import sawstead.solid.Feature;
import sawstead.solid.Mark;
import sawstead.solid.Opening;
import sawstead.solid.Panel;
import sawstead.solid.PocketBore;
import sawstead.solid.Recess;
import sawstead.solid.Vec;
import sawstead.station.Entry;
import sawstead.station.Part;
import sawstead.station.Station;

/**
 * A panel with all that is cut and driven into it, measured from the corner that lies lower left
 * when one looks at its front, grain to the right.
 *
 * @param panel in its own frame
 * @param stock name of its sheet
 * @param lines what is where, in words
 * @param crosses where something is driven through it square to a face, from the corner, mm; the
 *     third number is 1 on the front and 0 on the back
 */
record PanelCard(Panel panel, String stock, List<String> lines, List<Vec> crosses) {
  PanelCard {
    lines = List.copyOf(lines);
    crosses = List.copyOf(crosses);
  }

  static PanelCard of(Station station, Part part, Panel panel) {
    Words words = new Words(station.brief().units());
    Vec corner = panel.outline().bounds().low();
    List<String> lines = new ArrayList<>();
    if (panel.outline().corners().size() != 4) {
      lines.add("not a rectangle: see its DXF");
    }
    Map<String, List<double[]>> points = new TreeMap<>();
    for (Feature feature : panel.features()) {
      if (feature instanceof Bore bore) {
        point(points, hole(bore, words), bore.u() - corner.x(), bore.v() - corner.y());
      } else if (feature instanceof PocketBore pocket) {
        Vec at = pocket.at().minus(corner);
        Face face = pocket.direction().z() < 0 ? Face.FRONT : Face.BACK;
        point(points, "pocket " + side(face), at.x(), at.y());
      } else {
        line(feature, corner, words).ifPresent(lines::add);
      }
    }
    List<Vec> crosses = new ArrayList<>();
    for (Entry entry : Entry.of(station, part)) {
      Vec at = entry.at().minus(corner);
      crosses.add(new Vec(at.x(), at.y(), entry.face() == Face.FRONT ? 1 : 0));
      String what = FastenerWords.item(entry.fastener(), words);
      point(points, what + " " + side(entry.face()), at.x(), at.y());
    }
    points.forEach(
        (what, spots) ->
            new Spots(spots).lines(at -> bare(words, at)).forEach(l -> lines.add(what + " " + l)));
    return new PanelCard(panel, part.stock().orElse(""), lines, crosses);
  }

  /** Length, width and thickness, such as {@code 780 x 566 x 18 mm}. */
  String size(Words words) {
    return words.length(panel.length())
        + " x "
        + words.length(panel.width())
        + " x "
        + thickness(words);
  }

  /** A sheet is as thick as it was measured: a fraction would hide it. */
  private String thickness(Words words) {
    return words.unit() == Unit.MM
        ? words.length(panel.thickness())
        : LengthFormat.millimetres().withUnit(panel.thickness());
  }

  private static Optional<String> line(Feature feature, Vec corner, Words words) {
    if (feature instanceof Mark mark) {
      return mark.strokes().isEmpty() && !mark.text().isBlank()
          ? Optional.of(mark.text())
          : Optional.empty();
    }
    return Optional.of(cut(feature, corner, words));
  }

  private static String cut(Feature feature, Vec corner, Words words) {
    if (feature instanceof Opening opening) {
      return "opening " + spread(opening.outline().bounds(), corner, words);
    }
    if (feature instanceof Recess recess) {
      return recess.operation()
          + " "
          + words.length(recess.depth())
          + " deep "
          + side(recess.face())
          + ", "
          + spread(recess.outline().bounds(), corner, words);
    }
    if (feature instanceof EdgeBore bore) {
      return "hole "
          + LengthFormat.millimetres().withUnit(bore.diameter())
          + " into the edge, "
          + words.length(bore.depth())
          + " deep "
          + place(bore.at(), corner, words)
          + ", "
          + bare(words, bore.at().z())
          + " from the back";
    }
    if (feature instanceof Bevel bevel) {
      return "bevel "
          + side(bevel.face())
          + ", "
          + bare(words, bevel.acrossFace())
          + " across the face, "
          + words.length(bevel.downEdge())
          + " down the edge";
    }
    throw new IllegalStateException("no words for " + feature.getClass().getSimpleName());
  }

  private static String hole(Bore bore, Words words) {
    return "hole "
        + LengthFormat.millimetres().withUnit(bore.diameter())
        + (bore.through()
            ? " through"
            : " " + words.length(bore.depth()) + " deep " + side(bore.face()));
  }

  private static void point(
      Map<String, List<double[]>> points, String what, double along, double up) {
    points.computeIfAbsent(what, any -> new ArrayList<>()).add(new double[] {along, up});
  }

  /** An amount without its unit, which is set as a fraction all the same. */
  private static String bare(Words words, double millimetres) {
    return words.bare(millimetres).replace("/", Fractions.SLASH);
  }

  private static String side(Face face) {
    return face == Face.FRONT ? "from the front" : "from the back";
  }

  private static String place(Vec at, Vec corner, Words words) {
    return "at "
        + bare(words, at.x() - corner.x())
        + " along, "
        + bare(words, at.y() - corner.y())
        + " up";
  }

  private static String spread(Box box, Vec corner, Words words) {
    return bare(words, box.low().x() - corner.x())
        + " to "
        + bare(words, box.high().x() - corner.x())
        + " along, "
        + bare(words, box.low().y() - corner.y())
        + " to "
        + words.length(box.high().y() - corner.y())
        + " up";
  }
}
