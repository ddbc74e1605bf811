package sawstead.joinery;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import sawstead.solid.Axis;
import sawstead.solid.Box;
import sawstead.solid.Vec;

/** Puts the screws of one leaf: every pitch along its middle, countersunk in its outer face. */
final class HingeScrews {
  /** First and last screw from the ends of a piece of hinge, at least, mm. */
  private static final double END = 15;

  private HingeScrews() {}

  static Fastened in(
      Leaf leaf, Stretch piece, HingeSection section, HingeProfile profile, Fixings fixings) {
    Board board = leaf.board();
    Box carrier = board.box();
    double into = carrier.size().along(leaf.inward().axis());
    Optional<Screw> chosen = fixings.shelf().hingeScrew(profile.leafThickness(), into);
    if (chosen.isEmpty()) {
      return new Fastened(
          List.of(),
          List.of(
              String.format(
                  Locale.ROOT,
                  "no screw number 4 to 6 at hand suits leaf %s on %s of %s",
                  leaf.id(),
                  fixings.lengths().near(into),
                  board.id())));
    }
    Fastened put =
        new RowLayout(
                row(leaf, piece, section.run(), profile),
                new Clearance(board, board, fixings),
                fixings.nextNumber(leaf.id(), FastenerKind.HINGE_SCREW))
            .filled(
                at -> Candidate.of(fastener(leaf, chosen.get(), at)),
                "hinge screws",
                leaf.id() + " on " + board.id());
    return isCarried(leaf, carrier)
        ? put
        : put.lacking(
            String.format(
                Locale.ROOT,
                "leaf %s of %s stands over the edge of %s",
                leaf.id(),
                fixings.lengths().near(profile.leafWidth()),
                board.id()));
  }

  /** True if the whole leaf lies on its board. */
  private static boolean isCarried(Leaf leaf, Box carrier) {
    for (Axis axis : Axis.values()) {
      boolean flat = axis == leaf.inward().axis();
      boolean in =
          leaf.box().low().along(axis) >= carrier.low().along(axis) - Board.SAME
              && leaf.box().high().along(axis) <= carrier.high().along(axis) + Board.SAME;
      if (!flat && !in) {
        return false;
      }
    }
    return true;
  }

  private static Row row(Leaf leaf, Stretch piece, Axis run, HingeProfile profile) {
    double outer = leaf.inward().opposite().sideOf(leaf.box());
    Vec middle = Heading.with(leaf.box().centre(), leaf.inward().axis(), outer);
    int count = (int) Math.floor((piece.length() - 2 * END) / profile.pitch() + 1e-9) + 1;
    double first = (piece.from() + piece.to() - (count - 1) * profile.pitch()) / 2;
    List<List<Vec>> spots = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      double at = first + i * profile.pitch();
      List<Vec> tries = new ArrayList<>(List.of(Heading.with(middle, run, at)));
      for (double by = 1; by < profile.pitch() / 2; by++) {
        for (double moved : new double[] {at - by, at + by}) {
          if (moved - piece.from() >= END && piece.to() - moved >= END) {
            tries.add(Heading.with(middle, run, moved));
          }
        }
      }
      spots.add(tries);
    }
    return new Row(spots, 0);
  }

  private static Fastener fastener(Leaf leaf, Screw screw, Vec at) {
    boolean edge = leaf.board().faceTowards(leaf.inward().opposite()) == null;
    return new Fastener(
        leaf.id() + "/" + FastenerKind.HINGE_SCREW.word() + "-",
        FastenerKind.HINGE_SCREW,
        List.of(leaf.id(), leaf.board().id()),
        at,
        leaf.inward().unit(),
        screw.length(),
        screw.gauge().shank(),
        screw.gauge().pilot(Wood.of(leaf.board(), edge)),
        screw.head(),
        false,
        "hinge");
  }
}
