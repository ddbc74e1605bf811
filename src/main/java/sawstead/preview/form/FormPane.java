package sawstead.preview.form;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiConsumer;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TitledPane;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import sawstead.intake.BriefSchema;
import sawstead.intake.BriefSpans;
import sawstead.measure.Unit;

/** The form: a card for each thing, opened when one wants it. */
public final class FormPane extends ScrollPane {
  private final VBox cards = new VBox(10);
  private final BiConsumer<String, String> filled;
  private final Map<String, FieldRow> rows = new LinkedHashMap<>();
  private List<Card> shown = List.of();
  private Map<String, BriefSpans.Span> spans = Map.of();

  /**
   * @param filled is told path and value of what was filled in
   */
  public FormPane(BiConsumer<String, String> filled) {
    this.filled = filled;
    cards.getStyleClass().add("form");
    getStyleClass().add("form-scroll");
    setFitToWidth(true);
    setContent(cards);
  }

  /** Follows a text; what somebody is typing into is left alone. */
  public void follow(String text) {
    Map<String, BriefSpans.Span> now = BriefSpans.of(text);
    if (now.isEmpty()) {
      return;
    }
    spans = now;
    List<Card> wanted = Cards.of(BriefSchema.expanded(), now.keySet());
    if (!wanted.equals(shown)) {
      build(wanted);
    }
    rows.values().forEach(this::fill);
  }

  private void fill(FieldRow row) {
    row.fill(value(row.field().path()), unit());
  }

  private Optional<String> value(String path) {
    return Optional.ofNullable(spans.get(path)).flatMap(BriefSpans.Span::value);
  }

  private Unit unit() {
    return value("units").flatMap(Unit::of).orElse(Unit.MM);
  }

  private void build(List<Card> wanted) {
    List<String> open = new ArrayList<>();
    cards
        .getChildren()
        .forEach(
            n -> {
              if (n instanceof TitledPane pane && pane.isExpanded()) {
                open.add(pane.getText());
              }
            });
    shown = wanted;
    rows.clear();
    cards.getChildren().clear();
    for (Card card : wanted) {
      TitledPane pane = new TitledPane(card.title(), new Region());
      pane.setAnimated(false);
      pane.setExpanded(false);
      pane.expandedProperty().addListener((o, was, is) -> open(pane, card));
      cards.getChildren().add(pane);
      pane.setExpanded(open.contains(card.title()) || wanted.get(0).equals(card) && open.isEmpty());
    }
  }

  /** Rows are made when a card is first opened: there are some hundreds of them. */
  private void open(TitledPane pane, Card card) {
    if (!pane.isExpanded() || pane.getContent() instanceof VBox) {
      return;
    }
    VBox content = new VBox(6);
    content.getStyleClass().add("card");
    if (!card.means().isEmpty()) {
      content.getChildren().add(text(card.means(), "card-means"));
    }
    for (Card.Group group : card.groups()) {
      if (!group.title().isEmpty()) {
        content.getChildren().add(text(group.title(), "group-title"));
      }
      for (Field field : group.fields()) {
        FieldRow row = new FieldRow(field, value -> filled.accept(field.path(), value));
        rows.put(field.path(), row);
        fill(row);
        content.getChildren().add(row);
      }
    }
    pane.setContent(content);
  }

  private static Label text(String words, String style) {
    Label label = new Label(words);
    label.setWrapText(true);
    label.setMinHeight(Region.USE_PREF_SIZE);
    label.getStyleClass().add(style);
    return label;
  }
}
