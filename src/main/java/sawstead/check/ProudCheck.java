package sawstead.check;

import java.util.List;
import java.util.Optional;
import sawstead.solid.Body;
import sawstead.solid.Vec;
import sawstead.station.Figure;
import sawstead.station.Part;
import sawstead.station.Site;

/**
 * Nothing beside or behind the saw stands higher than the lowest point of its table.
 *
 * <ul>
 *   <li>{@code proud} (stop): a body of the outfeed or a wing does;
 *   <li>{@code proud-in-band} (mind): it does not as measured, but may once all measurements are at
 *       the worst ends of their bands.
 * </ul>
 *
 * Exact for what is drawn; a bowed lid is as high as its band says, no more.
 */
final class ProudCheck implements Check {
  /** Rounding of heights that add up to the same, mm. */
  private static final double SAME = 1e-6;

  @Override
  public Outcome judge(Scene scene) {
    Optional<Site> site = scene.station().site();
    if (site.isEmpty()) {
      return Outcome.of(List.of());
    }
    Outcome.Notes notes = new Outcome.Notes();
    double table = site.get().levels().lowestTable();
    for (Part part : scene.parts()) {
      double above = part.body().box().high().z() - table;
      if (carriesBoards(part) && above > SAME) {
        notes.add(proud(scene, part, above));
      }
    }
    for (Figure figure : scene.station().figures().values()) {
      if (figure.name().endsWith("Drop")) {
        judgeBand(scene, figure, notes);
      }
    }
    return notes.outcome();
  }

  private static boolean carriesBoards(Part part) {
    return part.unit().equals("outfeed") || part.unit().startsWith("wing-");
  }

  private static Finding proud(Scene scene, Part part, double above) {
    Body body = part.body();
    Vec centre = body.box().centre();
    return Finding.stop(
        "proud",
        List.of(part.id()),
        new Vec(centre.x(), centre.y(), body.box().high().z()),
        part.id()
            + " stands "
            + scene.words().length(above)
            + " proud of the lowest point of the saw's table: boards catch on it",
        "write a larger drop, or lower it by at least " + scene.words().length(above));
  }

  private static void judgeBand(Scene scene, Figure figure, Outcome.Notes notes) {
    Words words = scene.words();
    String unit = figure.name().equals("outfeedDrop") ? "outfeed" : figure.name();
    notes.add(
        Margin.length(
            figure.name(),
            unit + " below the saw's table, at the worst",
            List.of(unit),
            figure.low(),
            0));
    if (figure.nominal() >= 0 && figure.low() < 0) {
      notes.add(
          Finding.general(
              Severity.MIND,
              "proud-in-band",
              List.of(unit),
              "the "
                  + unit
                  + " lies "
                  + words.length(figure.nominal())
                  + " below the table as measured, but may stand "
                  + words.length(-figure.low())
                  + " proud when every measurement is off the wrong way",
              "measure "
                  + Words.some(figure.rests().stream().limit(3).toList())
                  + " better, write a larger drop, or build it low and shim it up"));
    }
  }
}
