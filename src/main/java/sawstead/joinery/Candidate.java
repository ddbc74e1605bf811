package sawstead.joinery;

import java.util.List;

/**
 * A fastener that may go somewhere, with the room that it needs.
 *
 * @param fastener with an id still to be numbered
 * @param room what has to be free, station frame: its body, its head, the bore for its head
 */
record Candidate(Fastener fastener, List<Rod> room) {
  /** Wood between the bodies of two fasteners, or a body and a cut, mm (common practice). */
  static final double MARGIN = 3;

  Candidate {
    room = List.copyOf(room);
  }

  /** A fastener whose shank wants a margin and whose head wants its own size. */
  static Candidate of(Fastener fastener) {
    return new Candidate(fastener, List.of(fastener.shank().grown(MARGIN), fastener.head()));
  }
}
