package sawstead.preview.tape;

import java.util.Optional;
import java.util.OptionalDouble;
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
  private static final double SIDE = 18;
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
    Run r = run.orElseThrow();
    double low = Math.min(r.from(), r.to());
    double high = Math.max(r.from(), r.to());
    return SIDE + (at - low) / Math.max(1e-9, high - low) * (getWidth() - 2 * SIDE);
  }

  private void pull(MouseEvent event) {
    requestFocus();
    if (run.isPresent()) {
      Run r = run.get();
      double low = Math.min(r.from(), r.to());
      double high = Math.max(r.from(), r.to());
      double share = (event.getX() - SIDE) / Math.max(1, getWidth() - 2 * SIDE);
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
    if (w < 2 * SIDE || run.isEmpty()) {
      return;
    }
    Run r = run.get();
    Color ink = look.colour("tape-ink");
    g.setFill(look.colour("tape"));
    g.fillRoundRect(2, TOP, w - 4, bottom - TOP, 7, 7);
    r.contact().ifPresent(c -> blocked(g, r, c.at(), bottom));
    g.setStroke(ink);
    g.setFill(ink);
    g.setTextAlign(TextAlignment.CENTER);
    g.setTextBaseline(VPos.TOP);
    g.setFont(FONT);
    for (Marks.Mark mark : Marks.of(r, unit, w - 2 * SIDE)) {
      double x = Math.rint(pixel(mark.at())) + 0.5;
      g.setLineWidth(mark.rank() == 0 ? 1.6 : 1);
      g.strokeLine(x, bottom, x, bottom - (mark.rank() == 0 ? 17 : mark.rank() == 1 ? 12 : 7));
      number(g, r, mark, w);
    }
    print(g, r, w);
    thumb(g, r, bottom);
  }

  /** The number at a mark, within the tape; none that would stand half under a line. */
  private void number(GraphicsContext g, Run r, Marks.Mark mark, double w) {
    double half = wide(mark.number()) / 2;
    double x = Math.max(4 + half, Math.min(w - 4 - half, pixel(mark.at())));
    double clear = half + 3;
    boolean hidden =
        Math.abs(pixel(clamp(r, value.get())) - x) < clear
            || r.contact().map(c -> Math.abs(pixel(c.at()) - x) < clear).orElse(false);
    if (!hidden) {
      g.fillText(mark.number(), x, TOP + 3);
    }
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

  private void print(GraphicsContext g, Run r, double w) {
    g.setFill(look.colour("ink"));
    g.setFont(FONT);
    g.setTextBaseline(VPos.TOP);
    g.setTextAlign(TextAlignment.LEFT);
    OptionalDouble sign =
        r.contact().map(c -> OptionalDouble.of(pixel(c.at()))).orElse(OptionalDouble.empty());
    Captions captions = Captions.of(w, sign, wide(reads), wide(r.says()));
    captions.reads().ifPresent(room -> g.fillText(reads, room.from(), 1));
    captions.says().ifPresent(room -> g.fillText(within(r.says(), room), room.from(), 1));
  }

  private static String within(String words, Captions.Room room) {
    String cut = words;
    while (!cut.isEmpty() && wide(cut.equals(words) ? cut : cut + "...") > room.width() + 0.5) {
      cut = cut.substring(0, cut.length() - 1);
    }
    return cut.equals(words) ? words : cut + "...";
  }

  private static double wide(String words) {
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
