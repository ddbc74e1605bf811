package sawstead.layout;

/** A rectangle of a sheet, in steps, from near corner to far corner. */
record Region(int x0, int y0, int x1, int y1) {
  int length() {
    return x1 - x0;
  }

  int width() {
    return y1 - y0;
  }

  /** Extent in a direction. */
  int extent(Direction direction) {
    return direction == Direction.LENGTH ? length() : width();
  }

  int near(Direction direction) {
    return direction == Direction.LENGTH ? x0 : y0;
  }

  int far(Direction direction) {
    return direction == Direction.LENGTH ? x1 : y1;
  }

  /** The part between two coordinates of a direction. */
  Region between(Direction direction, int low, int high) {
    return direction == Direction.LENGTH
        ? new Region(low, y0, high, y1)
        : new Region(x0, low, x1, high);
  }
}
