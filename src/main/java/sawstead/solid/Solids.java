package sawstead.solid;

import java.util.List;

/** Everyday solids for envelopes. */
public final class Solids {
  private Solids() {}

  /** Box from the local origin to (width, depth, height), mm. */
  public static Solid box(double width, double depth, double height) {
    return new Stack(List.of(new Layer(Outline.rectangle(0, 0, width, depth), height)));
  }

  /** Upright cylinder about the local w axis from w = 0 to its height, mm. */
  public static Solid cylinder(double diameter, double height) {
    return new Stack(List.of(new Layer(Outline.circle(0, 0, diameter), height)));
  }
}
