package sawstead.preview.tags;

import java.util.Locale;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Pane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.scene.shape.Rectangle;
import sawstead.check.Margin;
import sawstead.check.Words;

/**
 * A margin as a bar: the mark is what is needed, the bar is what there is, so that what only just
 * fits is seen at a glance.
 */
final class MarginBar extends VBox {
  private static final double HEIGHT = 8;

  /** The mark stands at this share of the bar's length. */
  private static final double MARK = 0.5;

  /** Less than this share of the need to spare is tight. */
  private static final double TIGHT = 0.1;

  MarginBar(Margin margin, Words words) {
    super(3);
    getStyleClass().add("margin-bar");
    boolean missing = margin.spare() < 0;
    String state = missing ? "stop" : isTight(margin) ? "mind" : "note";
    Label amount = new Label(amount(margin, words) + (missing ? " missing" : " to spare"));
    amount.getStyleClass().addAll("margin-amount", state);
    amount.setMinWidth(Region.USE_PREF_SIZE);
    Label what = new Label(margin.what());
    what.getStyleClass().add("margin-what");
    what.setWrapText(true);
    what.setMinHeight(Region.USE_PREF_SIZE);
    HBox.setHgrow(what, Priority.ALWAYS);
    what.setMaxWidth(Double.MAX_VALUE);
    HBox head = new HBox(8, what, amount);
    head.setAlignment(Pos.BOTTOM_LEFT);
    Pane track = new Pane();
    track.setMinHeight(HEIGHT);
    track.setMaxHeight(HEIGHT);
    track.getStyleClass().add("margin-track");
    Rectangle bar = new Rectangle(0, HEIGHT);
    bar.getStyleClass().addAll("margin-fill", state);
    Rectangle mark = new Rectangle(2, HEIGHT + 6);
    mark.getStyleClass().add("margin-mark");
    mark.setLayoutY(-3);
    bar.widthProperty().bind(track.widthProperty().multiply(share(margin)));
    mark.layoutXProperty().bind(track.widthProperty().multiply(MARK));
    track.getChildren().addAll(bar, mark);
    getChildren().addAll(head, track);
  }

  private static boolean isTight(Margin margin) {
    return margin.spare() < Math.max(1, TIGHT * Math.abs(margin.needs()));
  }

  /** Has over needs, squeezed so that the need is half way and no amount leaves the bar. */
  static double share(Margin margin) {
    double has = Math.max(0, margin.has());
    double needs = Math.max(1e-9, margin.needs());
    return margin.needs() <= 0
        ? (margin.spare() >= 0 ? 1 - MARK / (1 + margin.spare() / 10) : 0)
        : has / (has + needs);
  }

  private static String amount(Margin margin, Words words) {
    double value = Math.abs(margin.spare());
    return switch (margin.dimension()) {
      case LENGTH -> words.length(value);
      case MASS -> words.mass(value);
      case FORCE -> String.format(Locale.ROOT, "%.0f N", value);
    };
  }
}
