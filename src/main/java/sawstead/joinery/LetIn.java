package sawstead.joinery;

import java.util.Optional;
import sawstead.solid.Box;
import sawstead.solid.Vec;

/** Finishes a joint whose first board is let into the second by a depth: glue, perhaps brads. */
final class LetIn {
  private LetIn() {}

  static Joined fixed(Meeting let, String word, double depth, boolean brads, Fixings fixings) {
    Fastened fastened = brads ? brads(let, word, depth, fixings) : Fastened.NONE;
    return Glue.needed(let.joined(let.first(), let.second(), fastened), fixings, let);
  }

  /** Brads from the host's outer face through its web into the guest's end. */
  private static Fastened brads(Meeting let, String word, double depth, Fixings fixings) {
    Patch patch = let.patch();
    Vec sunk = patch.direction().scale(depth);
    Box floor = new Box(patch.rectangle().low().plus(sunk), patch.rectangle().high().plus(sunk));
    Patch seen =
        new Patch(patch.normal(), !patch.towardsPlus(), floor, patch.bFace(), Optional.empty());
    // The recess of this very joint is full of the guest: it is not in the way of its brads.
    Board host = let.second();
    Board uncut =
        new Board(
            host.id(),
            host.stock(),
            host.thickness(),
            host.density(),
            host.outline(),
            host.features().subList(0, host.features().size() - 1),
            host.placement());
    return Brads.in(
        new Meeting(uncut, let.first(), seen, !let.swapped()),
        word,
        host.thickness() - depth,
        let.first().box().size().along(patch.normal()),
        fixings);
  }
}
