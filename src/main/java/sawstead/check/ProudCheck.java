package sawstead.check;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import sawstead.solid.Body;
import sawstead.solid.Vec;
import sawstead.station.Figure;
import sawstead.station.Part;
import sawstead.station.PartKind;
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
 * Exact for what is drawn; a bowed lid is as high as its band says, no more. What is kept in a
 * cubby is not looked at: it would clash with the top first.
 */
final class ProudCheck implements Check {
  /** Rounding of heights that add up to the same, mm. */
  private static final double SAME = 1e-6;

  /** Figures that are a drop below the table, and what a person calls the unit that has it. */
  private static final Map<String, String> UNITS =
      Map.of("outfeedDrop", "outfeed", "leftWingDrop", "left wing", "rightWingDrop", "right wing");

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
    judgeBands(scene, notes);
    return notes.outcome();
  }

  private static boolean carriesBoards(Part part) {
    boolean beside = part.unit().equals("outfeed") || part.unit().startsWith("wing-");
    return beside && part.kind() != PartKind.ENVELOPE;
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

  private static void judgeBands(Scene scene, Outcome.Notes notes) {
    List<Figure> low = new ArrayList<>();
    for (Figure figure : scene.station().figures().values()) {
      if (!UNITS.containsKey(figure.name())) {
        continue;
      }
      String unit = UNITS.get(figure.name());
      notes.add(
          Margin.length(
              figure.name(),
              "the " + unit + " below the saw's table, at the worst",
              List.of(unit),
              figure.low(),
              0));
      if (figure.nominal() >= 0 && figure.low() < 0) {
        low.add(figure);
      }
    }
    if (!low.isEmpty()) {
      notes.add(inBand(scene, low));
    }
  }

  private static Finding inBand(Scene scene, List<Figure> low) {
    Figure worst = low.stream().min(Comparator.comparingDouble(Figure::low)).orElseThrow();
    List<String> units = low.stream().map(f -> UNITS.get(f.name())).toList();
    return Finding.general(
        Severity.MIND,
        "proud-in-band",
        units,
        "the "
            + String.join(" and the ", units)
            + " would lie "
            + scene.words().length(worst.nominal())
            + " below the table, but may stand "
            + scene.words().length(-worst.low())
            + " proud when every measurement is off the wrong way",
        "measure "
            + Words.some(worst.rests().stream().limit(3).toList())
            + " better, write a larger drop, or build it low and shim it up");
  }
}
