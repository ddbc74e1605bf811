package sawstead.layout;

/**
 * Which guide may lead a cut. Common practice, no source: a piece goes against the fence only by an
 * edge that is long enough for its width, with enough between fence and blade to push safely; a
 * short edge goes on the sled; what is too large or heavy for the saw is cut along a rail, which
 * needs something to rest on: the work, or the work and a strip beside it.
 */
final class CuttingRules {
  private final SawLimits limits;
  private final Kerfs kerfs;
  private final Board board;

  CuttingRules(SawLimits limits, Kerfs kerfs, Board board) {
    this.limits = limits;
    this.kerfs = kerfs;
    this.board = board;
  }

  /** Whether a piece is small and light enough to be brought to the table saw. */
  boolean fitsTable(Region region) {
    double length = Steps.mm(region.length());
    double width = Steps.mm(region.width());
    return Math.max(length, width) <= limits.longest()
        && Math.min(length, width) <= limits.widest()
        && board.mass(length, width) <= limits.heaviest();
  }

  /** What the blade of a guide takes, in steps. */
  int kerf(Guide guide) {
    return Steps.up(kerfs.of(guide.tool()));
  }

  /** The best guide for a cut that leaves {@code nearSize} on the near side of the kerf. */
  Guidance guidance(Region region, Direction along, int nearSize) {
    if (fitsTable(region) && hasRoom(region, along)) {
      int rest = region.extent(along.across()) - nearSize - kerf(Guide.FENCE);
      if (fenceHolds(region, along) && atFence(nearSize)) {
        return new Guidance(Guide.FENCE, nearSize, true);
      }
      // A strip too narrow for the fence falls off beside the blade, the wide rest at the fence.
      boolean strip = Steps.mm(nearSize) < limits.narrowestAtFence();
      if (strip && fenceHolds(region, along) && atFence(rest)) {
        return new Guidance(Guide.FENCE, rest, true);
      }
      if (sledHolds(region, along) && Steps.mm(nearSize) <= limits.farthestStop()) {
        return new Guidance(Guide.SLED, Math.max(nearSize, 0), true);
      }
      // Last, since the near part then is only as true as the width of the whole piece.
      if (fenceHolds(region, along) && atFence(rest)) {
        return new Guidance(Guide.FENCE, rest, true);
      }
    }
    return rail(region, along, nearSize);
  }

  /** The same along the rail, whatever else would do: it needs no straight edge. */
  Guidance rail(Region region, Direction along, int nearSize) {
    int rest = region.extent(along.across()) - nearSize - kerf(Guide.RAIL);
    double wider = Steps.mm(Math.max(nearSize, rest));
    if (wider >= limits.rest()) {
      return Guidance.rail(true);
    }
    return new Guidance(Guide.PACKED_RAIL, -1, wider >= limits.clamped());
  }

  /** Whether the whole piece has room before the blade and behind it. */
  private boolean hasRoom(Region region, Direction along) {
    return Steps.mm(region.extent(along)) <= Math.min(limits.infeed(), limits.outfeed());
  }

  private boolean fenceHolds(Region region, Direction along) {
    int edge = region.extent(along);
    return Steps.mm(edge) >= limits.shortestFenceEdge() && edge >= region.extent(along.across());
  }

  private boolean atFence(int setting) {
    double mm = Steps.mm(setting);
    return mm >= limits.narrowestAtFence() && mm <= limits.ripCapacity();
  }

  private boolean sledHolds(Region region, Direction along) {
    double longer = Steps.mm(Math.max(region.length(), region.width()));
    return Steps.mm(region.extent(along)) <= limits.sledCapacity()
        && longer >= limits.shortestHeld();
  }
}
