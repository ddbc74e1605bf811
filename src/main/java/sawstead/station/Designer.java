package sawstead.station;

import java.util.List;
import java.util.Optional;
import sawstead.brief.Brads;
import sawstead.brief.Brief;
import sawstead.brief.ScrewStock;
import sawstead.joinery.Brad;
import sawstead.joinery.Fixings;
import sawstead.joinery.Screw;
import sawstead.joinery.ScrewGauge;
import sawstead.joinery.ScrewShelf;
import sawstead.measure.LengthFormat;

/** Runs units on a draft, in three rounds: place, cut, join. */
public final class Designer {
  private Designer() {}

  /**
   * Solves heights and floor plan of a brief that has a saw; empty for a brief of own panels only.
   *
   * @throws DesignException when no station follows from the brief
   */
  public static Optional<Site> survey(Brief brief) {
    if (brief.saw().isEmpty() || brief.station().isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(Surveyor.survey(brief, brief.saw().get(), brief.station().get()));
  }

  /**
   * Builds a station.
   *
   * @param brief what was measured and wished
   * @param site its solved sizes
   * @param units in the order in which they place, cut and join
   * @param sums its figures
   * @throws DesignException when the units cannot build what the brief asks for
   */
  public static Station design(
      Brief brief, Optional<Site> site, List<Unit> units, List<FigureSum> sums) {
    Draft draft = new Draft(brief, fixings(brief));
    units.forEach(u -> u.place(draft));
    units.forEach(u -> u.cut(draft));
    units.forEach(u -> u.join(draft));
    return draft.finish(site, Figures.of(sums));
  }

  private static Fixings fixings(Brief brief) {
    List<Screw> screws = brief.workshop().screws().stream().map(Designer::screw).toList();
    Brads brads = brief.workshop().brads();
    Fixings fixings =
        Fixings.of(new ScrewShelf(screws)).withBrads(new Brad(brads.length(), brads.diameter()));
    fixings = fixings.writing(LengthFormat.of(brief.units()));
    return brief.workshop().glue() ? fixings : fixings.withoutGlue();
  }

  private static Screw screw(ScrewStock stock) {
    return new Screw(new ScrewGauge(stock.gauge()), stock.length(), stock.pocket());
  }
}
