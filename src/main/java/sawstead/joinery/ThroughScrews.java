package sawstead.joinery;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import sawstead.measure.LengthFormat;
import sawstead.solid.Vec;

/** Wood screws square through the first board of a meeting into the second. */
final class ThroughScrews {
  private ThroughScrews() {}

  static Fastened in(Meeting meeting, String word, boolean glued, Fixings fixings) {
    Board first = meeting.first();
    Board second = meeting.second();
    double through = first.thickness();
    double into = meeting.depthOfSecond();
    Optional<Screw> chosen = fixings.shelf().choose(through, into, meeting.intoEdge());
    if (chosen.isEmpty()) {
      return new Fastened(
          List.of(),
          List.of(
              String.format(
                  Locale.ROOT,
                  "no screw at hand goes through %s and holds in %s: %s",
                  fixings.lengths().near(through),
                  fixings.lengths().near(into),
                  meeting.where())));
    }
    Screw screw = chosen.get();
    Spacing spacing = meeting.intoEdge() ? Spacing.EDGE_SCREWS : Spacing.SCREWS;
    Row row = Row.of(meeting, spacing);
    Fastened put =
        new RowLayout(
                row,
                new Clearance(first, second, fixings),
                fixings.nextNumber(first.id(), FastenerKind.WOOD_SCREW))
            .filled(
                at -> Candidate.of(fastener(meeting, screw, at, word, glued)),
                "screws",
                meeting.where());
    return glued ? put : carrying(put, screw, through, meeting, fixings.lengths());
  }

  /** Without glue, a screw has to carry: less thread than {@link ScrewShelf#FULL_HOLD} is told. */
  private static Fastened carrying(
      Fastened put, Screw screw, double through, Meeting meeting, LengthFormat lengths) {
    double hold = ScrewShelf.hold(screw, through);
    if (hold >= ScrewShelf.FULL_HOLD || put.fasteners().isEmpty()) {
      return put;
    }
    String weak =
        String.format(
            Locale.ROOT,
            "%s holds only %.1f of %.0f diameters: %s",
            screw.words(lengths),
            hold,
            ScrewShelf.FULL_HOLD,
            meeting.where());
    return put.lacking(weak);
  }

  private static Fastener fastener(
      Meeting meeting, Screw screw, Vec onPatch, String word, boolean glued) {
    Vec axis = meeting.patch().direction();
    Board first = meeting.first();
    Board second = meeting.second();
    return new Fastener(
        first.id() + "/" + FastenerKind.WOOD_SCREW.word() + "-",
        FastenerKind.WOOD_SCREW,
        List.of(first.id(), second.id()),
        onPatch.minus(axis.scale(first.thickness())),
        axis,
        screw.length(),
        screw.gauge().shank(),
        screw.gauge().pilot(Wood.of(second, meeting.intoEdge())),
        screw.head(),
        glued,
        word);
  }
}
