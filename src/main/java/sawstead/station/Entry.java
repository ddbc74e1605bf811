package sawstead.station;

import java.util.List;
import sawstead.joinery.Fastener;
import sawstead.solid.Face;
import sawstead.solid.Placement;
import sawstead.solid.Vec;

/**
 * Where a fastener goes first into a panel, square to one of its faces: what one marks there.
 *
 * @param fastener that goes in
 * @param at where, in the panel's own frame, mm
 * @param face by which it goes in
 */
public record Entry(Fastener fastener, Vec at, Face face) {
  /** Cosine from which an axis counts as square to the face. */
  private static final double SQUARE = 1 - 1e-9;

  /** All of a panel, in the order of the station's fasteners. */
  public static List<Entry> of(Station station, Part panel) {
    Placement back = panel.body().placement().inverse();
    return station.fasteners().stream()
        .filter(f -> f.joins().get(0).equals(panel.id()))
        .filter(f -> Math.abs(back.turn(f.axis()).z()) > SQUARE)
        .map(
            f ->
                new Entry(
                    f, back.apply(f.at()), back.turn(f.axis()).z() < 0 ? Face.FRONT : Face.BACK))
        .toList();
  }
}
