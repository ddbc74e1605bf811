package sawstead.export.dxf;

import java.util.Locale;
import java.util.Map;
import sawstead.drawing.dxf.DxfUnit;
import sawstead.drawing.dxf.DxfVersion;
import sawstead.drawing.dxf.Layer;
import sawstead.solid.Face;

/**
 * Which layer a thing is drawn on: operation, depth and face, so that one layer is one pass of one
 * tool.
 *
 * <p>{@code outline}, {@code opening}, {@code groove-9mm5-front}, {@code dado-6mm-back}, {@code
 * bore-through}, {@code bore-12mm-front}, {@code pocket-38mm-front}, {@code edge-bore}, {@code
 * bevel-18mm-back}, {@code mark}, {@code label}. The unit stands where the decimal point would: old
 * versions allow letters, digits, {@code -}, {@code _} and {@code $} only, and in R12 the letters
 * are capitals.
 */
final class LayerNames {
  private static final int BOLD = 50;
  private static final int FINE = 25;
  private static final int WHITE_OR_BLACK = 7;

  // Palette indices: 1 red, 2 yellow, 3 green, 4 cyan, 5 blue, 6 magenta, 8 and 9 greys, 30 orange.
  private static final Map<String, Integer> COLOURS =
      Map.of(
          "opening",
          1,
          "bore",
          3,
          "pocket",
          30,
          "edge-bore",
          30,
          "bevel",
          6,
          "mark",
          8,
          "label",
          9);
  private static final int RECESS_FRONT = 5;
  private static final int RECESS_BACK = 4;

  private final DxfVersion version;
  private final DxfUnit unit;

  LayerNames(DxfVersion version, DxfUnit unit) {
    this.version = version;
    this.unit = unit;
  }

  Layer outline() {
    return new Layer(spelt("outline"), WHITE_OR_BLACK, BOLD);
  }

  /** A layer whose operation says all: {@code opening}, {@code edge-bore}, {@code mark}. */
  Layer of(String operation) {
    return layer(operation, operation, WHITE_OR_BLACK);
  }

  Layer through(String operation) {
    return layer(operation, operation + "-through", WHITE_OR_BLACK);
  }

  /** A layer for one depth, mm, from one face. */
  Layer of(String operation, double depth, Face face) {
    String side = face.name().toLowerCase(Locale.ROOT);
    return layer(
        operation,
        operation + "-" + unit.inName(depth) + "-" + side,
        face == Face.FRONT ? RECESS_FRONT : RECESS_BACK);
  }

  private Layer layer(String operation, String name, int otherwise) {
    return new Layer(spelt(name), COLOURS.getOrDefault(operation, otherwise), FINE);
  }

  private String spelt(String name) {
    return version == DxfVersion.R12 ? name.toUpperCase(Locale.ROOT) : name;
  }
}
