package sawstead.layout;

/**
 * A sheet, or a piece of it as it came from the seller.
 *
 * @param whole all of it
 * @param usable without the edges that are cut away; no part may reach beyond it
 */
record Sawable(Region whole, Region usable) {
  /** A whole sheet. */
  static Sawable of(Stock stock) {
    Trim trim = stock.trim();
    return new Sawable(
        new Region(0, 0, Steps.down(stock.length()), Steps.down(stock.width())),
        new Region(
            Steps.up(trim.left()),
            Steps.up(trim.bottom()),
            Steps.down(stock.length() - trim.right()),
            Steps.down(stock.width() - trim.top())));
  }

  /** What lies before a cut; so much of it is cut away again along the cut, in steps. */
  Sawable before(Direction direction, int at, int oversize) {
    int near = usable.near(direction);
    return new Sawable(
        whole.between(direction, whole.near(direction), at),
        usable.between(direction, near, Math.max(near, at - oversize)));
  }

  /** What lies beyond a cut whose kerf ends there. */
  Sawable beyond(Direction direction, int at, int oversize) {
    int far = usable.far(direction);
    return new Sawable(
        whole.between(direction, at, whole.far(direction)),
        usable.between(direction, Math.min(far, at + oversize), far));
  }
}
