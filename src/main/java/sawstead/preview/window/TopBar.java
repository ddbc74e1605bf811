package sawstead.preview.window;

import java.util.Optional;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.Slider;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToolBar;
import javafx.scene.control.Tooltip;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import sawstead.check.Report;
import sawstead.check.Severity;
import sawstead.check.Words;
import sawstead.preview.look.Signs;
import sawstead.preview.scene.Arrangement;
import sawstead.preview.scene.Section;
import sawstead.preview.scene.Stance;
import sawstead.solid.Axis;
import sawstead.solid.Box;
import sawstead.station.Figure;
import sawstead.station.Station;

/** The verdict, and how to look at the station. */
final class TopBar extends VBox {
  /** Narrower than that, pixels, the first row is crowded. */
  private static final double CROWDED = 1150;

  private static final double NARROW_VERDICT = 170;

  /** What sign, a short name and a narrow verdict take. */
  private static final double LEFT = 345;

  private final Desk desk;
  private final Label name = new Label("Sawstead");
  private final Label verdict = new Label("reading ...");
  private final Label height = new Label();
  private final StackPane sign = new StackPane();
  private final ToolBar acts = new ToolBar();
  private final ToggleButton measure;
  private final ToggleButton brief = new ToggleButton("Brief");
  private final ComboBox<String> cutWhere = new ComboBox<>();
  private final Slider cutAt = slider("section", 0.5);
  private Optional<Box> box = Optional.empty();

  TopBar(Desk desk) {
    this.desk = desk;
    getStyleClass().add("top-bar");
    name.getStyleClass().add("station-name");
    verdict.setId("verdict");
    verdict.getStyleClass().add("verdict");
    verdict.setMinWidth(Region.USE_PREF_SIZE);
    brief.setMinWidth(Region.USE_PREF_SIZE);
    name.setMinWidth(60);
    height.setMinWidth(0);
    height.setId("height");
    height.getStyleClass().add("verdict");
    verdict.setWrapText(true);
    HBox first = new HBox(12, sign, name, verdict, height, gap());
    first.setAlignment(Pos.CENTER_LEFT);
    measure = toggle("measure", desk::measure, "key M");
    ToggleButton way = toggle("way", desk::showWay, "the room that is swept on the way, key W");
    brief.setId("brief");
    brief.getStyleClass().add("big");
    brief.setOnAction(e -> desk.toggleBrief());
    tip(brief, "Ctrl+B");
    Button files = button("Write files", desk::writeFiles, "Ctrl+E");
    files.setId("write-files");
    Button save = button("Save", desk::save, "Ctrl+S");
    save.setId("save");
    Button dark = button("\u25d0", desk::toggleDark, "light or dark, Ctrl+D");
    dark.setId("dark");
    desk.floor()
        .addEventHandler(
            KeyEvent.KEY_PRESSED,
            e -> {
              if (!e.isShortcutDown() && e.getCode() == KeyCode.M) {
                measure.fire();
              } else if (!e.isShortcutDown() && e.getCode() == KeyCode.W) {
                way.fire();
              } else if (e.getCode() == KeyCode.ESCAPE) {
                putCaliperAway();
              }
            });
    Button larger = button("A+", desk.root()::larger, "everything larger, Ctrl and +");
    larger.setId("larger");
    Button smaller = button("A\u2212", desk.root()::smaller, "everything smaller, Ctrl and -");
    smaller.setId("smaller");
    Button open = button("Open", desk::openOther, "Ctrl+O, or drag a brief in");
    open.setId("open");
    Button keys = button("?", Keys::show, "all keys, F1");
    keys.setId("keys");
    // What does not fit into a tool bar is reached by the arrow at its end.
    acts.getItems().setAll(open, brief, save, files, smaller, larger, dark, keys);
    acts.getStyleClass().add("bar-row");
    acts.skinProperty().addListener(o -> crowd());
    first.getChildren().add(acts);
    ToolBar second = new ToolBar();
    second.getStyleClass().addAll("bar-row", "second-row");
    int number = 1;
    for (Stance stance : Stance.values()) {
      Button stand = button(stance.word(), () -> desk.stand(stance), "key " + number++);
      stand.setId("stand-" + stance.word());
      second.getItems().add(stand);
    }
    second.getItems().add(button("fit", desk.floor()::fit, "key F"));
    ToggleButton clear = new ToggleButton("see through");
    clear.setId("see-through");
    clear.getStyleClass().add("big");
    clear.setMinWidth(Region.USE_PREF_SIZE);
    clear.setOnAction(e -> desk.floor().seeThrough(clear.isSelected()));
    Slider spread = slider("spread", 0);
    spread.valueProperty().addListener((o, was, is) -> desk.spread(is.doubleValue()));
    cutWhere.getItems().setAll("no section", "across", "along", "level");
    cutWhere.setValue("no section");
    cutWhere.setId("section-axis");
    cutWhere.setMinWidth(118);
    cutWhere.valueProperty().addListener(o -> cut());
    cutAt.valueProperty().addListener(o -> cut());
    second
        .getItems()
        .addAll(gap(), measure, way, clear, group("spread", spread), group("cut", cutWhere, cutAt));
    setSpacing(8);
    widthProperty().addListener(o -> crowd());
    getChildren().addAll(first, second);
  }

  /** Where it is narrow the verdict takes two lines, and the height stands on the floor alone. */
  private void crowd() {
    boolean crowded = getWidth() < CROWDED;
    acts.setMinWidth(Math.max(0, Math.min(acts.prefWidth(-1), getWidth() - LEFT)));
    verdict.setMaxWidth(crowded ? NARROW_VERDICT : Region.USE_COMPUTED_SIZE);
    verdict.setPrefWidth(crowded ? NARROW_VERDICT : Region.USE_COMPUTED_SIZE);
    height.setVisible(!crowded);
    height.setManaged(!crowded);
  }

  void show(Station station) {
    name.setText(station.brief().name());
    height.setText(height(station));
    box = Optional.of(Arrangement.box(station));
  }

  void show(Report report) {
    long stops = report.count(Severity.STOP);
    long minds = report.count(Severity.MIND);
    Severity worst = stops > 0 ? Severity.STOP : minds > 0 ? Severity.MIND : Severity.NOTE;
    sign.getChildren().setAll(Signs.of(worst, 30));
    String words =
        stops > 0
            ? "do not cut: " + count(stops, "reason")
            : minds > 0
                ? "look before you cut: " + count(minds, "thing") + " to mind"
                : "clear to cut";
    verdict.setText(words);
    verdict.getStyleClass().setAll("label", "verdict", worst.word());
  }

  /** The text is no brief, or no station follows from it: there is nothing to judge. */
  void unread() {
    sign.getChildren().setAll(Signs.of(Severity.STOP, 30));
    verdict.setText("no station yet");
    verdict.getStyleClass().setAll("label", "verdict", Severity.STOP.word());
    height.setText("");
  }

  /** Ends measuring, if somebody measures. */
  void putCaliperAway() {
    if (measure.isSelected()) {
      measure.fire();
    }
  }

  void briefIsOpen(boolean open) {
    brief.setSelected(open);
  }

  private static String height(Station station) {
    Figure height = station.figures().get("workingHeight");
    Words words = new Words(station.brief().units());
    return height == null ? "" : "working height " + words.length(height.nominal());
  }

  private static String count(long n, String one) {
    return n == 1 ? "one " + one : n + " " + one + "s";
  }

  private void cut() {
    Optional<Axis> axis =
        switch (cutWhere.getValue()) {
          case "across" -> Optional.of(Axis.Y);
          case "along" -> Optional.of(Axis.X);
          case "level" -> Optional.of(Axis.Z);
          default -> Optional.empty();
        };
    cutAt.setDisable(axis.isEmpty());
    desk.floor()
        .cut(
            axis.isEmpty() || box.isEmpty()
                ? Section.NONE
                : new Section(axis, at(axis.get(), box.get())));
  }

  private double at(Axis axis, Box within) {
    double low = within.low().along(axis);
    double high = within.high().along(axis);
    return low + cutAt.getValue() * (high - low);
  }

  private static ToggleButton toggle(
      String words, java.util.function.Consumer<Boolean> does, String key) {
    ToggleButton button = new ToggleButton(words);
    button.setId(words);
    button.getStyleClass().add("big");
    button.setMinWidth(Region.USE_PREF_SIZE);
    button.setOnAction(e -> does.accept(button.isSelected()));
    tip(button, key);
    return button;
  }

  private static Button button(String words, Runnable does, String key) {
    Button button = new Button(words);
    button.getStyleClass().add("big");
    button.setMinWidth(Region.USE_PREF_SIZE);
    button.setOnAction(e -> does.run());
    tip(button, key);
    return button;
  }

  private static void tip(javafx.scene.control.Control control, String words) {
    control.setTooltip(new Tooltip(words));
  }

  private static Slider slider(String id, double at) {
    Slider slider = new Slider(0, 1, at);
    slider.setId(id);
    slider.setPrefWidth(96);
    slider.setMinWidth(60);
    slider.setBlockIncrement(0.05);
    slider.setAccessibleText(id);
    return slider;
  }

  private static Node group(String words, Node... held) {
    Label label = new Label(words);
    label.getStyleClass().add("bar-label");
    label.setMinWidth(Region.USE_PREF_SIZE);
    HBox group = new HBox(6, label);
    group.getChildren().addAll(held);
    group.setAlignment(Pos.CENTER_LEFT);
    return group;
  }

  private static Region gap() {
    Region gap = new Region();
    HBox.setHgrow(gap, Priority.ALWAYS);
    return gap;
  }
}
