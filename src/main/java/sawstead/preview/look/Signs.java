package sawstead.preview.look;

import javafx.scene.Group;
import javafx.scene.shape.SVGPath;
import sawstead.check.Severity;

/**
 * The signs of findings: an octagon for stop, a triangle for mind, a ring for note. Colour is never
 * the only sign.
 */
public final class Signs {
  private static final double DRAWN = 24;

  private Signs() {}

  /** The sign of a severity, that many pixels high. */
  public static Group of(Severity severity, double size) {
    SVGPath shape = new SVGPath();
    SVGPath mark = new SVGPath();
    switch (severity) {
      case STOP -> {
        shape.setContent("M7.6 1 H16.4 L23 7.6 V16.4 L16.4 23 H7.6 L1 16.4 V7.6 Z");
        mark.setContent("M6 10.4 H18 V13.6 H6 Z");
      }
      case MIND -> {
        shape.setContent("M12 2 L23.2 22 H0.8 Z");
        mark.setContent("M10.8 8.5 H13.2 L12.8 15.5 H11.2 Z M10.8 17 H13.2 V19.4 H10.8 Z");
      }
      case NOTE -> {
        shape.setContent("M12 1 A11 11 0 1 1 11.99 1 Z M12 4.4 A7.6 7.6 0 1 0 12.01 4.4 Z");
        mark.setContent("M10.7 10.4 H13.3 V17 H10.7 Z M10.7 6.9 H13.3 V9.2 H10.7 Z");
      }
    }
    shape.getStyleClass().addAll("sign", severity.word());
    mark.getStyleClass().addAll("sign-mark", severity.word());
    Group sign = new Group(shape, mark);
    sign.setScaleX(size / DRAWN);
    sign.setScaleY(size / DRAWN);
    sign.setAccessibleText(severity.word());
    return new Group(sign);
  }
}
