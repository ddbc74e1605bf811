package sawstead.preview.text;

import java.util.Set;
import javafx.application.Platform;
import javafx.geometry.VPos;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.control.TextArea;
import javafx.scene.layout.Region;
import javafx.scene.text.Font;
import javafx.scene.text.Text;
import javafx.scene.text.TextAlignment;
import sawstead.preview.look.SharpCanvas;
import sawstead.preview.look.Tokens;

/** Line numbers beside a text area that does not wrap, with an octagon at lines with a flaw. */
final class Gutter extends Region {
  private static final double WIDTH = 58;
  private static final double PAD = 6;

  private final SharpCanvas canvas = new SharpCanvas(this::draw);
  private final TextArea area;
  private Set<Integer> flawed = Set.of();
  private Tokens look = Tokens.of(false);

  Gutter(TextArea area) {
    this.area = area;
    getChildren().add(canvas);
    setMinWidth(WIDTH);
    setMaxWidth(WIDTH);
    getStyleClass().add("gutter");
    area.scrollTopProperty().addListener(o -> canvas.redraw());
    area.textProperty().addListener(o -> Platform.runLater(canvas::redraw));
    area.fontProperty().addListener(o -> canvas.redraw());
  }

  void mark(Set<Integer> lines) {
    flawed = lines;
    canvas.redraw();
  }

  void look(Tokens tokens) {
    look = tokens;
    canvas.redraw();
  }

  /** As the area draws them: its one text node, shared out among its lines. */
  private double lineHeight(long lines) {
    if (area.lookup(".text") instanceof Text drawn && drawn.getLayoutBounds().getHeight() > 0) {
      return drawn.getLayoutBounds().getHeight() / Math.max(1, lines);
    }
    Text probe = new Text("0");
    probe.setFont(area.getFont());
    return probe.getLayoutBounds().getHeight();
  }

  @Override
  protected void layoutChildren() {
    canvas.resizeRelocate(0, 0, getWidth(), getHeight());
    canvas.redraw();
  }

  private void draw(GraphicsContext g) {
    long lines = area.getText().chars().filter(c -> c == '\n').count() + 1;
    double height = lineHeight(lines);
    double top = PAD - area.getScrollTop();
    g.setTextAlign(TextAlignment.RIGHT);
    g.setTextBaseline(VPos.TOP);
    g.setFont(Font.font(area.getFont().getFamily(), area.getFont().getSize() * 0.86));
    int first = (int) Math.max(1, -top / height);
    for (int line = first; line <= Math.max(1, lines); line++) {
      double y = top + (line - 1) * height;
      if (y > getHeight()) {
        return;
      }
      boolean bad = flawed.contains(line);
      if (bad) {
        octagon(g, 11, y + height / 2, 7);
      }
      g.setFill(look.colour(bad ? "vermilion" : "ink-soft"));
      g.fillText(Integer.toString(line), WIDTH - 10, y + 1);
    }
  }

  private void octagon(GraphicsContext g, double x, double y, double s) {
    double c = s * 0.42;
    g.setFill(look.colour("vermilion"));
    g.fillPolygon(
        new double[] {x - s, x - c, x + c, x + s, x + s, x + c, x - c, x - s},
        new double[] {y - c, y - s, y - s, y - c, y + c, y + s, y + s, y + c},
        8);
    g.setFill(look.colour("card"));
    g.fillRect(x - 3.5, y - 1, 7, 2);
  }
}
