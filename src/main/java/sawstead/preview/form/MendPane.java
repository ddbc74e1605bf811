package sawstead.preview.form;

import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TitledPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import sawstead.check.Severity;
import sawstead.measure.Unit;
import sawstead.preview.bench.Trial;
import sawstead.preview.look.Prose;
import sawstead.preview.look.Signs;

/**
 * The card of what can be done about a finding: first the values that mend it alone, each with its
 * mark on the slider and a button that sets it, then those that only bear on it. It grows while
 * values are being tried, and what somebody holds is never replaced. A mark holds for the brief as
 * it was tried; once another value is changed, it is taken away.
 */
final class MendPane extends TitledPane {
  static final String TITLE = "What mends it";

  private final FormPane.Changes changes;
  private final Map<String, String> tried;
  private final Map<FieldRow, Trial> trials = new LinkedHashMap<>();
  private final Map<FieldRow, Node> buttons = new HashMap<>();
  private final VBox mends = new VBox(6);
  private final VBox bears = new VBox(6);
  private final Label state = Prose.of("trying values ...", "card-means");

  /**
   * @param about the remedy, in words
   * @param tried the values of the brief by path, as they are being tried
   */
  MendPane(String about, Map<String, String> tried, FormPane.Changes changes) {
    this.tried = Map.copyOf(tried);
    this.changes = changes;
    setText(TITLE);
    setAnimated(false);
    state.setId("mend-state");
    VBox content = new VBox(6, Prose.of(about, "card-means"), mends, state, bears);
    content.getStyleClass().add("card");
    setContent(content);
    setExpanded(true);
  }

  /**
   * One more value; nothing happens if it is worth nothing.
   *
   * @param of what it is a value of, in words
   */
  void add(Trial trial, Field field, String of) {
    if (trial.worth() == Trial.Worth.NOTHING) {
      return;
    }
    FieldRow row = new FieldRow(field, of, changes);
    trials.put(row, trial);
    VBox list = trial.mends() ? mends : bears;
    if (list == bears && bears.getChildren().isEmpty()) {
      bears.getChildren().add(Prose.of("bears on it, but does not mend it alone", "group-title"));
    }
    list.getChildren().add(row);
    if (trial.mends()) {
      row.below(button(trial, field, row));
    }
  }

  private Node button(Trial trial, Field field, FieldRow row) {
    Button set = new Button("set " + trial.value());
    set.setId("mend-" + field.path());
    set.getStyleClass().add("more");
    set.setMinWidth(Region.USE_PREF_SIZE);
    set.setOnAction(e -> changes.set(field.path(), trial.value()));
    Label says =
        Prose.of(
            trial.worth() == Trial.Worth.MENDS_ALL
                ? "mends it, and it may be cut"
                : "mends this one",
            "mend-says");
    HBox line = new HBox(8, Signs.of(Severity.NOTE, 18), set, says);
    line.setAlignment(Pos.CENTER_LEFT);
    buttons.put(row, line);
    return line;
  }

  /** Nothing more will come. */
  void complete(boolean all) {
    boolean none = mends.getChildren().isEmpty();
    state.setText(
        !all
            ? "not all values were tried: the brief was changed; ask again from the tag"
            : none ? "no single value mends it; see what its tag says" : "all values were tried");
  }

  /** Follows the values of the brief. */
  void follow(Map<String, String> values, Unit unit) {
    Set<String> changed = changed(values);
    trials.forEach(
        (row, trial) -> {
          String path = row.field().path();
          row.fill(Optional.ofNullable(values.get(path)), unit);
          boolean same = isOfTheSame(path, values);
          row.setVisible(same);
          row.setManaged(same);
          // It was tried with all others as they were.
          boolean holds = Set.of(path).containsAll(changed);
          row.mark(holds && trial.mends() ? Optional.of(trial.value()) : Optional.empty());
          Optional.ofNullable(buttons.get(row))
              .ifPresent(
                  b -> {
                    b.setVisible(holds);
                    b.setManaged(holds);
                  });
        });
  }

  /** Whether a path still leads to what it led to, and not to another item of a list. */
  private boolean isOfTheSame(String path, Map<String, String> values) {
    for (int end = path.indexOf(']'); end > 0; end = path.indexOf(']', end + 1)) {
      String item = path.substring(0, end + 1);
      String list = item.substring(0, item.lastIndexOf('['));
      if (count(list, tried) != count(list, values)
          || !Objects.equals(tried.get(item + ".id"), values.get(item + ".id"))
          || !Objects.equals(tried.get(item + ".name"), values.get(item + ".name"))) {
        return false;
      }
    }
    return true;
  }

  private static int count(String list, Map<String, String> values) {
    int count = 0;
    while (has(list + "[" + count + "]", values)) {
      count++;
    }
    return count;
  }

  private static boolean has(String item, Map<String, String> values) {
    return values.keySet().stream().anyMatch(path -> path.startsWith(item));
  }

  /** Paths of the values that are not as they were tried. */
  private Set<String> changed(Map<String, String> values) {
    Set<String> paths = new HashSet<>(tried.keySet());
    paths.addAll(values.keySet());
    paths.removeIf(p -> Objects.equals(tried.get(p), values.get(p)));
    return paths;
  }
}
