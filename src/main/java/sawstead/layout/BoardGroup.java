package sawstead.layout;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Queue;
import java.util.Set;
import sawstead.layout.packing.PackingProblem;
import sawstead.layout.packing.PieceKind;
import sawstead.layout.packing.SheetKind;

/**
 * The parts and stock of one board as a packing problem: blades widen pieces and sheets, trims
 * narrow sheets, parts across the grain are turned beforehand, and parts of equal size are one kind
 * whose copies get their names back afterwards.
 */
final class BoardGroup {
  private record Kind(int length, int width, boolean mayTurn) {}

  /** A copy of a part, and whether it was turned beforehand. */
  record Copy(Part part, boolean turned) {}

  private final Board board;
  private final List<Stock> stock;
  private final Map<Kind, Queue<Copy>> copies = new LinkedHashMap<>();
  private final int room;
  private final PackingProblem problem;
  private final boolean reserved;
  private final int pieces;
  private final List<Queue<Copy>> queues;

  /**
   * Gathers what is of one board.
   *
   * @param reserve whether every new sheet keeps room for the seller's cuts, if the parts allow it
   */
  BoardGroup(CutRequest request, Board board, boolean reserve) {
    this.board = board;
    this.room = Steps.up(request.kerfs().wider());
    this.stock = request.stock().stream().filter(s -> s.board().equals(board.name())).toList();
    request.parts().stream().filter(part -> part.board().equals(board.name())).forEach(this::add);
    List<PieceKind> kinds = new ArrayList<>();
    copies.forEach(
        (kind, queue) ->
            kinds.add(new PieceKind(kind.length, kind.width, kind.mayTurn, queue.size())));
    queues = List.copyOf(copies.values());
    pieces = kinds.stream().mapToInt(PieceKind::demand).sum();
    List<SheetKind> sheets = stock.stream().map(s -> sheet(s, 0, 0)).toList();
    List<SheetKind> less =
        reserve ? stock.stream().map(s -> reserved(s, request)).toList() : sheets;
    reserved = !less.equals(sheets) && PackingProblem.possible(less, kinds);
    problem = new PackingProblem(reserved ? less : sheets, kinds);
  }

  /** A sheet without what the seller's cuts will take beyond a kerf of one's own. */
  private SheetKind reserved(Stock s, CutRequest request) {
    Carry carry = request.carry().orElseThrow();
    int each = Steps.up(carry.lost(request.kerfs())) - room;
    if (s.offcut() || each <= 0) {
      return sheet(s, 0, 0);
    }
    Carry.Grid grid = carry.fewest(board, s.length(), s.width());
    return sheet(s, grid.along() * each, grid.across() * each);
  }

  private void add(Part part) {
    int length = Steps.up(part.length()) + room;
    int width = Steps.up(part.width()) + room;
    boolean across = part.grain() == Grain.ACROSS;
    Kind kind =
        new Kind(
            across ? width : length,
            across ? length : width,
            part.grain() == Grain.FREE && length != width);
    Queue<Copy> queue = copies.computeIfAbsent(kind, k -> new ArrayDeque<>());
    for (int i = 0; i < part.quantity(); i++) {
      queue.add(new Copy(part, across));
    }
  }

  private SheetKind sheet(Stock s, int lessLength, int lessWidth) {
    return new SheetKind(
        Math.max(1, Steps.down(s.usableLength()) + room - lessLength),
        Math.max(1, Steps.down(s.usableWidth()) + room - lessWidth),
        s.quantity() == Stock.ENDLESS ? SheetKind.ENDLESS : s.quantity(),
        !s.offcut(),
        Math.round(s.price() * 100));
  }

  /** The same once more, with all copies still to be given. */
  BoardGroup fresh(CutRequest request) {
    return new BoardGroup(request, board, reserved);
  }

  Board board() {
    return board;
  }

  PackingProblem problem() {
    return problem;
  }

  int pieces() {
    return pieces;
  }

  /** What was left for each blade, in steps. */
  int room() {
    return room;
  }

  /** Finished sizes that at least two pieces share, in steps: worth one setting for all. */
  Set<Integer> matched() {
    Map<Integer, Integer> counts = new HashMap<>();
    for (PieceKind kind : problem.pieces()) {
      counts.merge(kind.length() - room, kind.demand(), Integer::sum);
      counts.merge(kind.width() - room, kind.demand(), Integer::sum);
    }
    counts.values().removeIf(count -> count < 2);
    return counts.keySet();
  }

  Stock stock(int kind) {
    return stock.get(kind);
  }

  /** Takes the next copy of a kind of piece; each is given once. */
  Copy next(int kind) {
    return queues.get(kind).remove();
  }
}
