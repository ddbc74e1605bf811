package sawstead.solid;

final class Slabs {
  static final double GRID = 1.0 / (1 << 20);

  private Slabs() {}
}
