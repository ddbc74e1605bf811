package sawstead.layout.shop;

import java.nio.file.Path;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import sawstead.brief.Brief;
import sawstead.intake.BriefException;
import sawstead.intake.BriefReader;
import sawstead.layout.CutRequestException;
import sawstead.layout.Effort;
import sawstead.station.Briefs;
import sawstead.station.unit.Units;

/** Breakdowns for tests, planned once. Stations are not judged: whether they stand is no matter. */
public final class Breakdowns {
  private static final Effort LITTLE = new Effort(0.05, 1, 2);
  private static final Map<Path, Breakdown> DEMOS = new ConcurrentHashMap<>();

  private Breakdowns() {}

  /** Of a demo brief. */
  public static Breakdown demo(Path file) {
    return DEMOS.computeIfAbsent(
        file,
        f -> {
          try {
            return of(BriefReader.read(f));
          } catch (BriefException | CutRequestException e) {
            throw new AssertionError(f + ": " + e.getMessage(), e);
          }
        });
  }

  /** Of the demo brief with that name. */
  public static Breakdown demo(String name) {
    return demo(Path.of("models", name + ".yaml"));
  }

  /** Of the text of a brief. */
  public static Breakdown of(String text) throws CutRequestException {
    return of(Briefs.of(text));
  }

  static Breakdown of(Brief brief) throws CutRequestException {
    return Breakdown.of(Units.station(brief), false, LITTLE, (done, counted, bound) -> true);
  }
}
