package sawstead.layout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import sawstead.layout.packing.Tile;

/**
 * The seller's cuts: takes a sheet apart along the outermost cuts of its layout until each piece
 * can be carried, with as few cuts as it finds. Where the layout leaves the seller's kerf and the
 * oversize on both sides of it no room, a piece stays too large; the plan then says so.
 */
final class SellerStage {
  /**
   * What is left over and shorter than this goes home with its neighbour: the seller does not cut
   * strips, in steps: 100 mm.
   */
  private static final int WORTH_A_CUT = 100_000;

  private final Carry carry;
  private final Board board;
  private final int kerf;
  private final int oversize;
  private final int room;
  private final BiFunction<Sawable, Tile, SawNode> atHome;

  /**
   * Makes a stage for the sheets of one board.
   *
   * @param kerf of the seller's saw, in steps
   * @param room what the layout left for each blade, in steps
   * @param atHome takes apart what came home
   */
  SellerStage(
      Carry carry, Board board, int kerf, int room, BiFunction<Sawable, Tile, SawNode> atHome) {
    this.carry = carry;
    this.board = board;
    this.kerf = kerf;
    this.oversize = Steps.up(carry.oversize());
    this.room = room;
    this.atHome = atHome;
  }

  /** Whether a region can be carried in one piece. */
  boolean takes(Region region) {
    return carry.takes(board, Steps.mm(region.length()), Steps.mm(region.width()));
  }

  /** How many pieces of a tree are too large to be carried when they leave the seller's. */
  int tooLarge(SawNode node) {
    if (node instanceof SawNode.Sawn sawn && sawn.how().guide() == Guide.SELLER) {
      return tooLarge(sawn.near()) + tooLarge(sawn.far());
    }
    return node == null || takes(node.region()) ? 0 : 1;
  }

  /** A sheet taken apart, first by the seller, then at home. */
  SawNode of(Sawable work, Tile tile) {
    return of(work, tile, true);
  }

  private SawNode of(Sawable work, Tile tile, boolean mayTranspose) {
    if (takes(work.whole()) || !(tile instanceof Tile.Row row)) {
      return atHome.apply(work, tile);
    }
    if (row.parts().isEmpty()) {
      return leftOver(work.whole());
    }
    Direction direction = row.alongLength() ? Direction.LENGTH : Direction.WIDTH;
    List<Tile> parts = new ArrayList<>(row.parts());
    parts.sort(
        Comparator.comparingInt((Tile part) -> Dissection.extent(part, direction)).reversed());
    SawNode apart = apart(work, direction, row, parts);
    // Either the leftover is cut off first, or it goes home with one of the pieces.
    Optional<Tile> other =
        parts.size() == 1
            ? Optional.of(parts.get(0))
            : mayTranspose ? transposed(row) : Optional.empty();
    return other
        .map(way -> of(work, way, parts.size() == 1))
        .filter(way -> better(way, apart))
        .orElse(apart);
  }

  /** Rows that are all divided alike, as one row of columns: a grid can be cut apart either way. */
  private static Optional<Tile> transposed(Tile.Row row) {
    List<List<Tile>> columns = new ArrayList<>();
    int slack = Integer.MAX_VALUE;
    Direction along = row.alongLength() ? Direction.WIDTH : Direction.LENGTH;
    for (Tile part : row.parts()) {
      if (!(part instanceof Tile.Row inner)
          || inner.alongLength() == row.alongLength()
          || !columns.isEmpty() && inner.parts().size() != columns.size()) {
        return Optional.empty();
      }
      slack = Math.min(slack, inner.slack());
      for (int i = 0; i < inner.parts().size(); i++) {
        Tile tile = inner.parts().get(i);
        if (columns.size() == i) {
          columns.add(new ArrayList<>());
        } else if (Dissection.extent(columns.get(i).get(0), along)
            != Dissection.extent(tile, along)) {
          return Optional.empty();
        }
        columns.get(i).add(tile);
      }
    }
    List<Tile> parts = new ArrayList<>();
    for (List<Tile> column : columns) {
      Tile first = column.get(0);
      parts.add(
          new Tile.Row(
              row.alongLength(),
              row.alongLength() ? row.length() : first.length(),
              row.alongLength() ? first.width() : row.width(),
              column,
              row.slack()));
    }
    return Optional.of(new Tile.Row(!row.alongLength(), row.length(), row.width(), parts, slack));
  }

  private boolean better(SawNode a, SawNode b) {
    int fewer = Integer.compare(tooLarge(a), tooLarge(b));
    return fewer != 0 ? fewer < 0 : a.cuts() <= b.cuts();
  }

  /** Cuts off as many tiles as can be carried together, then goes on with the others. */
  private SawNode apart(Sawable work, Direction direction, Tile.Row row, List<Tile> parts) {
    List<Tile> head = new ArrayList<>();
    List<Tile> tail = new ArrayList<>();
    for (Tile part : parts) {
      head.add(part);
      boolean fits = takes(before(work, direction, head).whole());
      if (head.size() > 1 && !fits) {
        head.remove(part);
        tail.add(part);
      }
    }
    while (head.size() > 1
        && needed(tail, direction) > -room
        && needed(tail, direction) < WORTH_A_CUT) {
      tail.add(head.remove(head.size() - 1));
    }
    Sawable near = before(work, direction, head);
    int at = near.whole().far(direction);
    Sawable far = work.beyond(direction, at + kerf, oversize);
    boolean enough =
        tail.isEmpty()
            ? far.whole().extent(direction) >= WORTH_A_CUT
            : far.usable().extent(direction) >= needed(tail, direction);
    if (!enough) {
      return atHome.apply(work, tileOf(row, parts));
    }
    SawNode rest = tail.isEmpty() ? leftOver(far.whole()) : of(far, tileOf(row, tail));
    return new SawNode.Sawn(
        work.whole(),
        direction.across(),
        at,
        Guidance.seller(),
        of(near, head.size() == 1 ? head.get(0) : tileOf(row, head)),
        rest);
  }

  private Sawable before(Sawable work, Direction direction, List<Tile> head) {
    int at = work.usable().near(direction) + needed(head, direction) + oversize;
    return work.before(direction, Math.min(at, work.whole().far(direction)), oversize);
  }

  private int needed(List<Tile> tiles, Direction direction) {
    int sum = -room;
    for (Tile tile : tiles) {
      sum += Dissection.needed(tile, direction);
    }
    return sum;
  }

  private static Tile tileOf(Tile.Row row, List<Tile> parts) {
    return new Tile.Row(row.alongLength(), row.length(), row.width(), parts, row.slack());
  }

  /** Nothing is wanted of it, but it goes home as well. */
  private SawNode leftOver(Region region) {
    Direction direction = region.length() >= region.width() ? Direction.LENGTH : Direction.WIDTH;
    if (takes(region) || region.extent(direction) < 2 * WORTH_A_CUT) {
      return new SawNode.Left(region);
    }
    int at = region.near(direction) + (region.extent(direction) - kerf) / 2;
    return new SawNode.Sawn(
        region,
        direction.across(),
        at,
        Guidance.seller(),
        leftOver(region.between(direction, region.near(direction), at)),
        leftOver(region.between(direction, at + kerf, region.far(direction))));
  }
}
