package sawstead.preview.tape;

import java.util.Optional;
import javafx.beans.property.DoubleProperty;
import javafx.beans.property.SimpleDoubleProperty;
import javafx.geometry.VPos;
import javafx.scene.AccessibleRole;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.control.Tooltip;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseEvent;
import javafx.scene.layout.Region;
import javafx.scene.paint.Color;
import javafx.scene.text.Font;
import javafx.scene.text.FontWeight;
import javafx.scene.text.Text;
import javafx.scene.text.TextAlignment;
import sawstead.measure.Unit;
import sawstead.preview.look.Faces;
import sawstead.preview.look.SharpCanvas;
import sawstead.preview.look.Tokens;

/** A measuring tape, drawn to the scale of what it measures, with a thumb to pull. */
public final class Tape extends Region {
  private static final double HEIGHT = 74;
  private static final double TOP = 20;
  private static final double COARSE = 20;
  private static final double FINE = 200;
  private static final Font FONT = Font.font(Faces.SANS, FontWeight.BOLD, 13);

  private final SharpCanvas canvas = new SharpCanvas(this::draw);
  private final DoubleProperty value = new SimpleDoubleProperty(this, "value");
  private final Tooltip tip = new Tooltip();
  private Tokens look = Tokens.of(false);
  private Optional<Run> run = Optional.empty();
  private Unit unit = Unit.MM;
  private String reads = "";

  /** A blank tape. */
  public Tape() {
    getChildren().add(canvas);
    setPrefHeight(HEIGHT);
    setMinHeight(HEIGHT);
    setMaxHeight(HEIGHT);
    setMinWidth(120);
    setFocusTraversable(true);
    getStyleClass().add("tape");
    setAccessibleRole(AccessibleRole.SLIDER);
    value.addListener(o -> canvas.redraw());
    focusedProperty().addListener(o -> canvas.redraw());
    addEventHandler(MouseEvent.MOUSE_PRESSED, this::pull);
    addEventHandler(MouseEvent.MOUSE_DRAGGED, this::pull);
    addEventHandler(KeyEvent.KEY_PRESSED, this::key);
    Tooltip.install(this, tip);
  }

  /** The parameter under the thumb. */
  public DoubleProperty valueProperty() {
    return value;
  }

  /** Lays out another tape; the thumb stays where it is if it can. */
  public void lay(Optional<Run> wanted, Unit inUnit) {
    run = wanted;
    unit = inUnit;
    run.ifPresent(r -> value.set(clamp(r, value.get())));
    setDisable(run.isEmpty());
    tip.setText(run.map(Run::says).orElse(""));
    canvas.redraw();
  }

  /** Pulls the thumb to a place, or as far towards it as this tape reaches. */
  void pullTo(double wanted) {
    run.ifPresent(r -> value.set(clamp(r, wanted)));
  }

  /** What the thumb reads, printed above the tape. */
  void read(String words) {
    reads = words;
    setAccessibleText(words);
    canvas.redraw();
  }

  /** Light or dark. */
  public void look(Tokens tokens) {
    look = tokens;
    canvas.redraw();
  }

  /** Pixels from the left of a parameter. */
  public double pixel(double at) {
    return Lettering.pixel(run.orElseThrow(), getWidth(), at);
  }

  private void pull(MouseEvent event) {
    requestFocus();
    if (run.isPresent()) {
      Run r = run.get();
      double low = Math.min(r.from(), r.to());
      double high = Math.max(r.from(), r.to());
      double share = (event.getX() - Lettering.SIDE) / Math.max(1, getWidth() - 2 * Lettering.SIDE);
      value.set(clamp(r, low + share * (high - low)));
    }
    event.consume();
  }

  private void key(KeyEvent event) {
    if (run.isEmpty()) {
      return;
    }
    Run r = run.get();
    double range = Math.abs(r.to() - r.from());
    double step = r.scale() == Run.Scale.STEPS ? 1 : range / (event.isShiftDown() ? FINE : COARSE);
    switch (event.getCode()) {
      case LEFT, DOWN -> value.set(clamp(r, value.get() - step));
      case RIGHT, UP -> value.set(clamp(r, value.get() + step));
      case HOME -> value.set(Math.min(r.from(), r.to()));
      case END -> value.set(Math.max(r.from(), r.to()));
      default -> {
        return;
      }
    }
    event.consume();
  }

  private static double clamp(Run r, double wanted) {
    return Math.max(Math.min(r.from(), r.to()), Math.min(Math.max(r.from(), r.to()), wanted));
  }

  @Override
  protected void layoutChildren() {
    canvas.resizeRelocate(0, 0, getWidth(), getHeight());
    canvas.redraw();
  }

  private void draw(GraphicsContext g) {
    double w = getWidth();
    double bottom = HEIGHT - 8;
    if (w < 2 * Lettering.SIDE || run.isEmpty()) {
      return;
    }
    Run r = run.get();
    Color ink = look.colour("tape-ink");
    g.setFill(look.colour("tape"));
    g.fillRoundRect(2, TOP, w - 4, bottom - TOP, 7, 7);
    r.contact().ifPresent(c -> blocked(g, r, c.at(), bottom));
    Lettering letters = Lettering.of(r, unit, w, clamp(r, value.get()), reads, Tape::wide);
    g.setStroke(ink);
    for (Marks.Mark mark : letters.marks()) {
      double x = Math.rint(pixel(mark.at())) + 0.5;
      g.setLineWidth(mark.rank() == 0 ? 1.6 : 1);
      g.strokeLine(x, bottom, x, bottom - (mark.rank() == 0 ? 17 : mark.rank() == 1 ? 12 : 7));
    }
    write(g, letters);
    thumb(g, r, bottom);
  }

  /** Beyond the first contact the tape is hatched: nobody gets there. */
  private void blocked(GraphicsContext g, Run r, double at, double bottom) {
    double x = pixel(at);
    double end = pixel(r.to());
    double left = Math.min(x, end);
    double right = Math.max(x, end);
    g.save();
    g.beginPath();
    g.rect(left, TOP, right - left, bottom - TOP);
    g.clip();
    g.setStroke(Color.web("#b92d15", 0.75));
    g.setLineWidth(3);
    for (double k = left - HEIGHT; k < right + HEIGHT; k += 11) {
      g.strokeLine(k, bottom, k + HEIGHT, bottom - HEIGHT);
    }
    g.restore();
    g.setFill(Color.web("#b92d15"));
    double s = 7;
    double cy = 10;
    double cut = s * 0.42;
    g.fillPolygon(
        new double[] {x - s, x - cut, x + cut, x + s, x + s, x + cut, x - cut, x - s},
        new double[] {cy - cut, cy - s, cy - s, cy - cut, cy + cut, cy + s, cy + s, cy + cut},
        8);
    g.fillRect(x - 1, cy, 2, bottom - cy);
  }

  private void write(GraphicsContext g, Lettering letters) {
    g.setTextAlign(TextAlignment.LEFT);
    g.setTextBaseline(VPos.TOP);
    g.setFont(FONT);
    g.setFill(look.colour("tape-ink"));
    letters.numbers().forEach(word -> g.fillText(word.text(), word.from(), TOP + 3));
    g.setFill(look.colour("ink"));
    letters.above().forEach(word -> g.fillText(word.text(), word.from(), 1));
  }

  static double wide(String words) {
    Text probe = new Text(words);
    probe.setFont(FONT);
    return probe.getLayoutBounds().getWidth();
  }

  private void thumb(GraphicsContext g, Run r, double bottom) {
    double x = pixel(clamp(r, value.get()));
    g.setFill(look.colour("ink"));
    g.fillRoundRect(x - 2, TOP - 3, 4, bottom - TOP + 9, 4, 4);
    g.fillRoundRect(x - 13, bottom - 12, 26, 20, 8, 8);
    g.setFill(look.colour("card"));
    for (int k = -1; k <= 1; k++) {
      g.fillRect(x + 5 * k - 1, bottom - 7, 2, 10);
    }
    if (isFocused()) {
      g.setStroke(look.colour("cobalt"));
      g.setLineWidth(2.5);
      g.strokeRoundRect(x - 15, bottom - 14, 30, 22, 10, 10);
    }
  }
}
