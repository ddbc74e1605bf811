package sawstead.check;

import sawstead.solid.Vec;

/** The six directions of the station's axes. */
public enum Way {
  LEFT("-x", new Vec(-1, 0, 0)),
  RIGHT("+x", new Vec(1, 0, 0)),
  FRONT("-y", new Vec(0, -1, 0)),
  REAR("+y", new Vec(0, 1, 0)),
  DOWN("-z", new Vec(0, 0, -1)),
  UP("+z", new Vec(0, 0, 1));

  private final String key;
  private final Vec direction;

  Way(String key, Vec direction) {
    this.key = key;
    this.direction = direction;
  }

  /** The key of the report: {@code +x}. */
  public String key() {
    return key;
  }

  /** Unit direction, station frame. */
  public Vec direction() {
    return direction;
  }
}
