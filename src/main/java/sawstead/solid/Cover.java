package sawstead.solid;

final class Cover {
  static final double SLACK = 1.0 / (1 << 18);

  private Cover() {}
}
