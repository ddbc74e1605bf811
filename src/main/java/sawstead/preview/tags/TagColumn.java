package sawstead.preview.tags;

import java.util.Comparator;
import java.util.List;
import java.util.function.Consumer;
import java.util.stream.IntStream;
import javafx.scene.Node;
import javafx.scene.control.ScrollPane;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.VBox;
import sawstead.check.Finding;
import sawstead.check.Margin;
import sawstead.check.Report;
import sawstead.check.Words;
import sawstead.preview.look.Prose;

/** The column of hang-tags, and below them what fits by how much. */
public final class TagColumn extends ScrollPane {
  private final VBox column = new VBox(10);
  private final Consumer<Finding> chosen;
  private final Consumer<Margin> asked;
  private final Consumer<Finding> change;

  /**
   * @param chosen is told which finding was clicked
   * @param asked is told which margin was clicked
   * @param change is told which finding somebody wants to do something about
   */
  public TagColumn(Consumer<Finding> chosen, Consumer<Margin> asked, Consumer<Finding> change) {
    this.chosen = chosen;
    this.asked = asked;
    this.change = change;
    getStyleClass().add("tag-column");
    column.getStyleClass().add("tag-list");
    setContent(column);
    setFitToWidth(true);
    setHbarPolicy(ScrollBarPolicy.NEVER);
    setPrefWidth(330);
    setMinWidth(260);
    note("reading ...");
  }

  /** One line instead of tags. */
  public void note(String words) {
    column.getChildren().setAll(Prose.of(words, "tag-note"));
  }

  /** The tags of a report. */
  public void hang(Report report) {
    Words words = new Words(report.station().brief().units());
    int held = held();
    column.getChildren().clear();
    if (report.findings().isEmpty()) {
      column.getChildren().add(Prose.of("Nothing to say against it.", "tag-note"));
    }
    for (Finding finding : report.findings()) {
      column
          .getChildren()
          .add(new HangTag(finding, () -> chosen.accept(finding), () -> change.accept(finding)));
    }
    if (!report.margins().isEmpty()) {
      column.getChildren().add(Prose.of("What fits, by how much", "column-title"));
    }
    for (Margin margin : tightestFirst(report)) {
      MarginBar bar = new MarginBar(margin, words);
      bar.setOnMouseClicked(e -> asked.accept(margin));
      bar.setFocusTraversable(true);
      bar.setOnKeyPressed(
          e -> {
            if (e.getCode() == KeyCode.ENTER || e.getCode() == KeyCode.SPACE) {
              asked.accept(margin);
              e.consume();
            }
          });
      column.getChildren().add(bar);
    }
    if (held >= 0) {
      column.getChildren().stream()
          .skip(Math.min(held, column.getChildren().size() - 1))
          .filter(Node::isFocusTraversable)
          .findFirst()
          .ifPresent(Node::requestFocus);
    }
  }

  /** The number of the tag that has the keys; negative if they are elsewhere. */
  private int held() {
    List<Node> all = column.getChildren();
    return IntStream.range(0, all.size())
        .filter(k -> all.get(k).isFocusWithin())
        .findFirst()
        .orElse(-1);
  }

  /** Chooses a finding as a click on its tag does; false if there is no such tag. */
  public boolean choose(int index) {
    var tags = column.getChildren().stream().filter(n -> n instanceof HangTag).toList();
    if (index >= tags.size()) {
      return false;
    }
    ((HangTag) tags.get(index)).fire();
    return true;
  }

  /** Does what the button on a tag does; false if there is no such tag. */
  public boolean change(int index) {
    var tags = column.getChildren().stream().filter(n -> n instanceof HangTag).toList();
    if (index >= tags.size()) {
      return false;
    }
    ((HangTag) tags.get(index)).change();
    return true;
  }

  private static List<Margin> tightestFirst(Report report) {
    return report.margins().stream()
        .distinct()
        .sorted(Comparator.comparingDouble(MarginBar::share))
        .toList();
  }
}
