package sawstead.layout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import sawstead.layout.packing.Tile;

/**
 * Turns the tiles of a sheet into cuts, from the whole sheet down to each piece, with the real kerf
 * of the saw that makes each cut. Pieces therefore lie where they really come off, and a rest that
 * a narrow blade left too large gets a cut of its own.
 *
 * <p>While a piece is too large for the table saw, as much as the table saw takes is cut off it at
 * once; later, one row after another. Equal tiles lie side by side, so that they share a setting.
 *
 * <p>A cut along the rail is a rough one where the sheet has room for it and the size that it would
 * give is that of several parts: it leaves {@link #ROUGH} more, and all those parts get their size
 * at one setting of the table saw. Nothing is lost by it but a little of what is left over.
 */
final class Dissection {
  /** What is too large by less than this is not worth a cut, in steps: 0.05 mm. */
  private static final int HAIR = 50;

  /** Slack that is not worth keeping in one piece, in steps: 25 mm. */
  private static final int SLIGHT = 25_000;

  /**
   * What a rough cut leaves to be taken off at the table saw, in steps; common practice, no source.
   */
  private static final int ROUGH = 4000;

  private final CuttingRules rules;
  private final int room;
  private final Set<Integer> matched;
  private final Sawable work;

  /**
   * Makes a dissection of one sheet, or of a piece of it as it came from the seller.
   *
   * @param room what the layout left for each blade, in steps
   * @param matched finished sizes that several parts share, in steps
   */
  Dissection(CuttingRules rules, int room, Set<Integer> matched, Sawable work) {
    this.rules = rules;
    this.room = room;
    this.matched = matched;
    this.work = work;
  }

  /** All its cuts, the trimming of its two reference edges first. */
  SawNode of(Tile tile) {
    return trimmed(work.whole(), Direction.LENGTH, trimmed -> node(trimmed, tile));
  }

  /** Straightens the near edge along a direction, then the one across it, then goes on. */
  private SawNode trimmed(Region region, Direction along, Function<Region, SawNode> next) {
    Function<Region, SawNode> after =
        along == Direction.LENGTH ? r -> trimmed(r, Direction.WIDTH, next) : next;
    Direction direction = along.across();
    int edge = work.usable().near(direction);
    if (edge == region.near(direction)) {
      return after.apply(region);
    }
    int at = edge - rules.kerf(Guide.RAIL);
    Region rest = region.between(direction, edge, region.far(direction));
    return new SawNode.Sawn(
        region,
        along,
        at,
        rules.rail(region, along, at - region.near(direction)),
        leftOf(region, direction, at),
        after.apply(rest));
  }

  private static SawNode leftOf(Region region, Direction direction, int end) {
    int near = region.near(direction);
    return end <= near ? null : new SawNode.Left(region.between(direction, near, end));
  }

  private SawNode node(Region region, Tile tile) {
    if (tile instanceof Tile.Row row) {
      Direction direction = row.alongLength() ? Direction.LENGTH : Direction.WIDTH;
      if (row.parts().isEmpty()) {
        return new SawNode.Left(region);
      }
      return slice(region, direction, ordered(region, direction, row.parts()));
    }
    Tile.Piece piece = (Tile.Piece) tile;
    for (Direction direction : List.of(Direction.LENGTH, Direction.WIDTH)) {
      int size = roughly(region, direction, piece);
      if (region.extent(direction) > size + HAIR) {
        return cut(region, direction.across(), size, piece);
      }
    }
    return new SawNode.Finished(region, piece);
  }

  /**
   * To which extent a tile alone in its region is cut now: exactly; or roughly, when that has to be
   * done along the rail and the table saw can do the rest; or not at all, when it is rough already.
   */
  private int roughly(Region region, Direction direction, Tile tile) {
    int need = needed(tile, direction) - room;
    if (!rules.fitsTable(region) && finishedLater(tile, direction)) {
      boolean roughAlready = region.extent(direction) <= need + ROUGH + room;
      return roughAlready ? region.extent(direction) : need + ROUGH;
    }
    return need;
  }

  /**
   * Whether the extent of a tile is that of several parts, and all that have it can be brought to
   * the table saw and cut to it there.
   */
  private boolean finishedLater(Tile tile, Direction direction) {
    return shared(tile, direction) && canFinish(tile, direction);
  }

  private boolean canFinish(Tile tile, Direction direction) {
    if (tile instanceof Tile.Row row) {
      return canFinish(row.parts(), direction);
    }
    Region rough = new Region(0, 0, tile.length() + ROUGH, tile.width() + ROUGH);
    int need = extent(tile, direction) - room;
    return rules.fitsTable(rough)
        && rules.guidance(rough, direction.across(), need).guide().tool() == Tool.TABLE;
  }

  private boolean canFinish(List<Tile> tiles, Direction direction) {
    for (Tile tile : tiles) {
      if (!canFinish(tile, direction)) {
        return false;
      }
    }
    return true;
  }

  private boolean shared(Tile tile, Direction direction) {
    return tile instanceof Tile.Row row
        ? shared(row.parts(), direction)
        : matched.contains(extent(tile, direction) - room);
  }

  private boolean shared(List<Tile> tiles, Direction direction) {
    for (Tile tile : tiles) {
      if (shared(tile, direction)) {
        return true;
      }
    }
    return false;
  }

  /**
   * Long parts first at the table; along the rail narrow ones first, so that much is left to rest
   * on.
   */
  private List<Tile> ordered(Region region, Direction direction, List<Tile> parts) {
    List<Tile> ordered = new ArrayList<>(parts);
    Comparator<Tile> byExtent = Comparator.comparingInt(t -> extent(t, direction));
    ordered.sort(rules.fitsTable(region) ? byExtent.reversed() : byExtent);
    return ordered;
  }

  private SawNode slice(Region region, Direction direction, List<Tile> parts) {
    Direction across = direction.across();
    int crossNeed = 0;
    for (Tile part : parts) {
      crossNeed = Math.max(crossNeed, needed(part, across) - room);
    }
    long full = parts.stream().filter(Dissection::fillsCross).count();
    if (region.extent(across) > crossNeed + HAIR && full >= 2) {
      int size = crossSize(region, across, crossNeed, parts);
      if (size < region.extent(across)) {
        Region kept = region.between(across, region.near(across), region.near(across) + size);
        return sawn(region, direction, size, slice(kept, direction, parts));
      }
    }
    Tile first = parts.get(0);
    if (parts.size() == 1) {
      int size = roughly(region, direction, first);
      return region.extent(direction) > size + HAIR
          ? cut(region, across, size, first)
          : node(region, first);
    }
    int taken = rules.fitsTable(region) ? 1 : most(region, direction, parts);
    int size = -room;
    for (int i = 0; i < taken; i++) {
      size += needed(parts.get(i), direction);
    }
    List<Tile> head = parts.subList(0, taken);
    List<Tile> tail = parts.subList(taken, parts.size());
    return split(region, across, size, head, tail);
  }

  /** The extent across to which a row of several tiles is cut before they are cut apart. */
  private int crossSize(Region region, Direction across, int need, List<Tile> parts) {
    boolean finishedLater =
        !rules.fitsTable(region) && shared(parts, across) && canFinish(parts, across);
    if (!finishedLater) {
      return need;
    }
    boolean roughAlready = region.extent(across) <= need + ROUGH + room;
    return roughAlready ? region.extent(across) : need + ROUGH;
  }

  /** How many parts from the near end the table saw takes together; at least 1, never all. */
  private int most(Region region, Direction direction, List<Tile> parts) {
    int taken = 1;
    int end = region.near(direction) - room + extent(parts.get(0), direction);
    while (taken < parts.size() - 1) {
      end += extent(parts.get(taken), direction);
      if (!rules.fitsTable(region.between(direction, region.near(direction), end))) {
        break;
      }
      taken++;
    }
    return taken;
  }

  private static boolean fillsCross(Tile tile) {
    return !(tile instanceof Tile.Row row) || row.slack() == 0;
  }

  private SawNode split(
      Region region, Direction along, int size, List<Tile> head, List<Tile> tail) {
    Direction direction = along.across();
    Guidance how = rules.guidance(region, along, size);
    int end = Math.min(region.far(direction), work.usable().far(direction));
    int spare = end - region.near(direction) - size - least(tail, direction);
    if (how.guide().tool() == Tool.GUIDED
        && spare >= ROUGH
        && shared(head, direction)
        && canFinish(head, direction)) {
      return apart(region, along, size + ROUGH, head, tail);
    }
    return apart(region, along, size, head, tail);
  }

  /** What tiles one after another need at least, the slack at the end of the last left out. */
  private static int least(List<Tile> tiles, Direction direction) {
    int sum = content(tiles.get(tiles.size() - 1), direction);
    for (Tile tile : tiles.subList(0, tiles.size() - 1)) {
      sum += needed(tile, direction);
    }
    return sum;
  }

  private SawNode apart(
      Region region, Direction along, int size, List<Tile> head, List<Tile> tail) {
    Direction direction = along.across();
    Guidance how = rules.guidance(region, along, size);
    int at = region.near(direction) + size;
    Region near = region.between(direction, region.near(direction), at);
    Region far = region.between(direction, at + rules.kerf(how.guide()), region.far(direction));
    return new SawNode.Sawn(
        region, along, at, how, slice(near, direction, head), slice(far, direction, tail));
  }

  private SawNode cut(Region region, Direction along, int size, Tile tile) {
    Direction direction = along.across();
    int near = region.near(direction);
    return sawn(region, along, size, node(region.between(direction, near, near + size), tile));
  }

  /** A cut that leaves the given node on the near side and nothing wanted beyond. */
  private SawNode sawn(Region region, Direction along, int size, SawNode near) {
    Direction direction = along.across();
    Guidance how = rules.guidance(region, along, size);
    int at = region.near(direction) + size;
    int beyond = at + rules.kerf(how.guide());
    SawNode far =
        beyond < region.far(direction)
            ? new SawNode.Left(region.between(direction, beyond, region.far(direction)))
            : null;
    return new SawNode.Sawn(region, along, at, how, near, far);
  }

  /**
   * To which extent a tile is cut: its own, or that of what is in it where the slack at its end is
   * not worth a cut of its own.
   */
  static int needed(Tile tile, Direction direction) {
    int extent = extent(tile, direction);
    int content = content(tile, direction);
    return extent - content <= SLIGHT ? content : extent;
  }

  private static int content(Tile tile, Direction direction) {
    if (!(tile instanceof Tile.Row row)) {
      return extent(tile, direction);
    }
    int content = 0;
    for (Tile part : row.parts()) {
      boolean follows = row.alongLength() == (direction == Direction.LENGTH);
      content =
          follows ? content + needed(part, direction) : Math.max(content, content(part, direction));
    }
    return content;
  }

  static int extent(Tile tile, Direction direction) {
    return direction == Direction.LENGTH ? tile.length() : tile.width();
  }
}
