package sawstead.joinery;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import sawstead.solid.Vec;

/** Puts one fastener at each spot of a row where it is clear, and says how many found no room. */
final class RowLayout {
  private final Row row;
  private final Clearance clearance;
  private final int firstNumber;

  /**
   * A row to be filled.
   *
   * @param row wanted spots
   * @param clearance what is in the way; the new fasteners are added to it
   * @param firstNumber number of the first fastener
   */
  RowLayout(Row row, Clearance clearance, int firstNumber) {
    this.row = row;
    this.clearance = clearance;
    this.firstNumber = firstNumber;
  }

  /**
   * Fills the row.
   *
   * @param at makes the candidate for a point of the joint's plane; its id ends before the number
   * @param what plural of what is put, for the words of a shortfall
   * @param where the parts joined, for the words of a shortfall
   */
  Fastened filled(Function<Vec, Candidate> at, String what, String where) {
    List<Fastener> put = new ArrayList<>();
    List<Vec> taken = new ArrayList<>();
    for (List<Vec> spots : row.spots()) {
      for (Vec spot : spots) {
        if (!isApart(spot, taken) && !spot.equals(spots.get(0))) {
          continue;
        }
        Candidate candidate = at.apply(spot);
        if (clearance.allows(candidate)) {
          Fastener fastener = candidate.fastener();
          put.add(fastener.named(fastener.id() + (firstNumber + put.size())));
          clearance.taken(candidate);
          taken.add(spot);
          break;
        }
      }
    }
    int wanted = row.spots().size();
    if (put.size() < wanted) {
      return new Fastened(
          put,
          List.of("only " + put.size() + " of " + wanted + " " + what + " found room: " + where));
    }
    if (wanted == 0) {
      return new Fastened(put, List.of("too small for any " + what + ": " + where));
    }
    return new Fastened(put, List.of());
  }

  private boolean isApart(Vec spot, List<Vec> taken) {
    return taken.stream().allMatch(t -> t.distance(spot) >= row.apart());
  }
}
