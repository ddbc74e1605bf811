package sawstead.layout;

import java.util.List;
import java.util.Optional;

/**
 * Everything the cut plan needs to know: the one door of this room.
 *
 * @param boards the sheet materials
 * @param parts what is to be cut
 * @param stock what it may be cut from
 * @param kerfs what the blades take
 * @param limits what the table saw can take
 * @param carry what goes home from the seller's in one piece; empty when whole sheets do
 */
public record CutRequest(
    List<Board> boards,
    List<Part> parts,
    List<Stock> stock,
    Kerfs kerfs,
    SawLimits limits,
    Optional<Carry> carry) {
  public CutRequest {
    boards = List.copyOf(boards);
    parts = List.copyOf(parts);
    stock = List.copyOf(stock);
  }

  /** A request for whole sheets. */
  public CutRequest(
      List<Board> boards, List<Part> parts, List<Stock> stock, Kerfs kerfs, SawLimits limits) {
    this(boards, parts, stock, kerfs, limits, Optional.empty());
  }
}
