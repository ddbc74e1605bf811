package sawstead.layout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import sawstead.layout.packing.Tile;

/**
 * Turns the tiles of a sheet into cuts, from the whole sheet down to each piece, with the real kerf
 * of the saw that makes each cut. Pieces therefore lie where they really come off, and a rest that
 * a narrow blade left too large gets a cut of its own.
 *
 * <p>While a piece is too large for the table saw, as much as the table saw takes is cut off it at
 * once; later, one row after another. Equal tiles lie side by side, so that they share a setting.
 */
final class Dissection {
  /** What is too large by less than this is not worth a cut, in steps: 0.05 mm. */
  private static final int HAIR = 50;

  private final CuttingRules rules;
  private final int room;

  /**
   * Makes a dissection.
   *
   * @param room what the layout left for each blade, in steps
   */
  Dissection(CuttingRules rules, int room) {
    this.rules = rules;
    this.room = room;
  }

  /** Cuts for a whole sheet, the trimming of its two reference edges first. */
  SawNode sheet(Stock stock, Tile tile) {
    Region all = new Region(0, 0, Steps.down(stock.length()), Steps.down(stock.width()));
    int trim = Steps.up(stock.trim());
    return trim == 0 ? node(all, tile) : trim(all, trim, tile);
  }

  private SawNode trim(Region all, int trim, Tile tile) {
    int kerf = rules.kerf(Guide.RAIL);
    Region straight = all.between(Direction.WIDTH, trim, all.y1());
    Region square = straight.between(Direction.LENGTH, trim, straight.x1());
    SawNode second =
        new SawNode.Sawn(
            straight,
            Direction.WIDTH,
            trim - kerf,
            Guidance.rail(true),
            leftOf(straight, Direction.LENGTH, trim - kerf),
            node(square, tile));
    return new SawNode.Sawn(
        all,
        Direction.LENGTH,
        trim - kerf,
        Guidance.rail(true),
        leftOf(all, Direction.WIDTH, trim - kerf),
        second);
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
    if (region.length() > piece.length() - room + HAIR) {
      return cut(region, Direction.WIDTH, piece.length() - room, piece);
    }
    if (region.width() > piece.width() - room + HAIR) {
      return cut(region, Direction.LENGTH, piece.width() - room, piece);
    }
    return new SawNode.Finished(region, piece);
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
    int crossNeed = extent(parts.get(0), across) - room;
    long full = parts.stream().filter(Dissection::fillsCross).count();
    if (region.extent(across) > crossNeed + HAIR && full >= 2) {
      Region kept = region.between(across, region.near(across), region.near(across) + crossNeed);
      return sawn(region, direction, crossNeed, slice(kept, direction, parts));
    }
    Tile first = parts.get(0);
    int firstNeed = extent(first, direction) - room;
    if (parts.size() == 1) {
      return region.extent(direction) > firstNeed + HAIR
          ? cut(region, across, firstNeed, first)
          : node(region, first);
    }
    int taken = rules.fitsTable(region) ? 1 : most(region, direction, parts);
    int size = -room;
    for (int i = 0; i < taken; i++) {
      size += extent(parts.get(i), direction);
    }
    List<Tile> head = parts.subList(0, taken);
    List<Tile> tail = parts.subList(taken, parts.size());
    return split(region, across, size, head, tail);
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

  private static int extent(Tile tile, Direction direction) {
    return direction == Direction.LENGTH ? tile.length() : tile.width();
  }
}
