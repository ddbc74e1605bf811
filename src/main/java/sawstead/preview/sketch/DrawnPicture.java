package sawstead.preview.sketch;

import java.util.Optional;
import javafx.geometry.VPos;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.layout.Region;
import javafx.scene.paint.Color;
import javafx.scene.shape.StrokeLineCap;
import javafx.scene.text.Font;
import javafx.scene.text.FontWeight;
import javafx.scene.text.TextAlignment;
import sawstead.preview.look.Faces;
import sawstead.preview.look.SharpCanvas;
import sawstead.preview.look.Tokens;
import sawstead.walk.Drawing;
import sawstead.walk.Drawing.Stroke;

/** A drawing with a pencil: thin lines, and what is to be measured in cobalt with arrow heads. */
public final class DrawnPicture extends Region {
  private static final double MARGIN = 1.5;
  private static final double HEAD = 9;

  private final SharpCanvas canvas = new SharpCanvas(this::draw);
  private Tokens look = Tokens.of(false);
  private Drawing drawing;

  /** A blank page. */
  public DrawnPicture() {
    getChildren().add(canvas);
    setMinSize(240, 130);
    setPrefSize(760, 400);
    getStyleClass().add("drawn-picture");
  }

  /** Light or dark. */
  public void look(Tokens tokens) {
    look = tokens;
    canvas.redraw();
  }

  /** What is shown; empty for a blank page. */
  public Optional<Drawing> drawing() {
    return Optional.ofNullable(drawing);
  }

  /** Shows a drawing, or a blank page. */
  public void show(Drawing wanted) {
    drawing = wanted;
    canvas.redraw();
  }

  private double unit() {
    return Math.min(
        getWidth() / (Drawing.WIDE + 2 * MARGIN), getHeight() / 2 / (Drawing.HIGH + 2 * MARGIN));
  }

  private double x(double column) {
    return getWidth() / 2 + (column - Drawing.WIDE / 2.0) * unit();
  }

  private double y(double line) {
    return getHeight() / 2 + (line - Drawing.HIGH / 2.0) * 2 * unit();
  }

  @Override
  protected void layoutChildren() {
    canvas.resizeRelocate(0, 0, getWidth(), getHeight());
    canvas.redraw();
  }

  private void draw(GraphicsContext g) {
    if (drawing == null || getWidth() < 1) {
      return;
    }
    g.setLineCap(StrokeLineCap.ROUND);
    g.setStroke(look.colour("ink"));
    g.setLineWidth(1.6);
    g.setTextBaseline(VPos.CENTER);
    for (Stroke stroke : drawing.strokes()) {
      draw(g, stroke);
    }
    drawing.arrow().ifPresent(a -> arrow(g, a));
  }

  private void draw(GraphicsContext g, Stroke stroke) {
    if (stroke instanceof Stroke.Line line) {
      g.strokeLine(x(line.fromX()), y(line.fromY()), x(line.toX()), y(line.toY()));
    } else if (stroke instanceof Stroke.Box box) {
      g.setFill(look.colour("birch").deriveColor(0, 1, 1, look.dark() ? 0.10 : 0.28));
      g.fillRect(x(box.x()), y(box.y()), box.width() * unit(), box.height() * 2 * unit());
      g.strokeRect(x(box.x()), y(box.y()), box.width() * unit(), box.height() * 2 * unit());
    } else if (stroke instanceof Stroke.Round round) {
      double r = Math.max(0.3, round.radius()) * 2 * unit();
      g.strokeOval(x(round.x()) - r, y(round.y()) - r, 2 * r, 2 * r);
    } else if (stroke instanceof Stroke.Word word) {
      g.setFill(look.colour("ink-soft"));
      g.setFont(Font.font(Faces.SANS, Math.max(11, 1.5 * unit())));
      g.fillText(word.text(), x(word.x()), y(word.y()));
    }
  }

  private void arrow(GraphicsContext g, Stroke.Line a) {
    Color cobalt = look.colour("cobalt");
    g.setStroke(cobalt);
    g.setFill(cobalt);
    g.setLineWidth(3.2);
    double x0 = x(a.fromX());
    double y0 = y(a.fromY());
    double x1 = x(a.toX());
    double y1 = y(a.toY());
    g.strokeLine(x0, y0, x1, y1);
    double length = Math.max(1e-9, Math.hypot(x1 - x0, y1 - y0));
    head(g, x0, y0, (x0 - x1) / length, (y0 - y1) / length);
    head(g, x1, y1, (x1 - x0) / length, (y1 - y0) / length);
    double high = Math.max(13, 2 * unit());
    boolean roomy = length > 3 * high;
    ask(g, roomy ? (x0 + x1) / 2 : Math.max(x0, x1) + high, (y0 + y1) / 2, high);
  }

  /** The dimension that is wanted, in the line, as a drawing has it; beside a short one. */
  private void ask(GraphicsContext g, double x, double y, double high) {
    g.setFill(look.colour("chalk"));
    g.fillOval(x - 0.75 * high, y - 0.75 * high, 1.5 * high, 1.5 * high);
    g.setFill(look.colour("cobalt"));
    g.setFont(Font.font(Faces.SANS, FontWeight.BOLD, high));
    g.setTextAlign(TextAlignment.CENTER);
    g.fillText("?", x, y);
    g.setTextAlign(TextAlignment.LEFT);
  }

  /** An arrow head whose tip is at a place, and a line across it as dimensions have it. */
  private static void head(GraphicsContext g, double x, double y, double dx, double dy) {
    g.fillPolygon(
        new double[] {x, x - HEAD * dx - HEAD / 2 * dy, x - HEAD * dx + HEAD / 2 * dy},
        new double[] {y, y - HEAD * dy + HEAD / 2 * dx, y - HEAD * dy - HEAD / 2 * dx},
        3);
    g.strokeLine(x - HEAD * dy, y + HEAD * dx, x + HEAD * dy, y - HEAD * dx);
  }
}
