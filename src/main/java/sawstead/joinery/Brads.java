package sawstead.joinery;

import java.util.List;
import java.util.Locale;
import sawstead.solid.Vec;

/** Brads square through the first board of a meeting into the second; they only clamp. */
final class Brads {
  /** Least length in the second board for a brad to clamp, mm (common practice, no source). */
  private static final double LEAST_HOLD = 8;

  private Brads() {}

  /**
   * Brads along the meeting's patch.
   *
   * @param through wood of the first board in their way, mm
   * @param into wood of the second board behind it, mm
   */
  static Fastened in(Meeting meeting, String word, double through, double into, Fixings fixings) {
    Brad brad = fixings.brad();
    double hold = brad.length() - through;
    if (hold < LEAST_HOLD || into - hold < ScrewShelf.TIP_COVER - Board.SAME) {
      return new Fastened(
          List.of(),
          List.of(
              String.format(
                  Locale.ROOT,
                  "brads of %s do not suit %s on %s: %s",
                  fixings.lengths().near(brad.length()),
                  fixings.lengths().near(through),
                  fixings.lengths().near(into),
                  meeting.where())));
    }
    Row row = Row.of(meeting, Spacing.BRADS);
    Vec axis = meeting.patch().direction();
    Board first = meeting.first();
    return new RowLayout(
            row,
            new Clearance(first, meeting.second(), fixings),
            fixings.nextNumber(first.id(), FastenerKind.BRAD))
        .filled(
            at ->
                Candidate.of(
                    new Fastener(
                        first.id() + "/" + FastenerKind.BRAD.word() + "-",
                        FastenerKind.BRAD,
                        List.of(first.id(), meeting.second().id()),
                        at.minus(axis.scale(through)),
                        axis,
                        brad.length(),
                        brad.diameter(),
                        0,
                        brad.diameter(),
                        true,
                        word)),
            "brads",
            meeting.where());
  }
}
