package sawstead.preview.form;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TitledPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import sawstead.intake.BriefSchema;
import sawstead.intake.BriefSpans;
import sawstead.measure.Unit;

/** The form: a card for each thing, opened when one wants it. */
public final class FormPane extends ScrollPane {
  private static final String BEARING = "What bears on it";

  private final VBox cards = new VBox(10);
  private final Changes changes;
  private final Map<TitledPane, List<FieldRow>> rows = new LinkedHashMap<>();
  private final Map<String, Field> known = new LinkedHashMap<>();
  private List<Card> shown = List.of();
  private Map<String, BriefSpans.Span> spans = Map.of();
  private Optional<Card> bearing = Optional.empty();

  /** Hears what is done with the form. */
  public interface Changes {
    /** A value is set. */
    void set(String path, String value);

    /** A value is being dragged past. */
    void wouldSet(String path, String value);

    /** A section is to be written out. */
    void writeOut(String path);

    /** A list is to have one more item. */
    void addTo(String list, int number);

    /** An item of a list is to go. */
    void removeFrom(String list, int index);
  }

  /**
   * @param changes is told what is done
   */
  public FormPane(Changes changes) {
    this.changes = changes;
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
      shown = wanted;
      known.clear();
      wanted.forEach(c -> c.groups().forEach(g -> g.fields().forEach(f -> known.put(f.path(), f))));
      build();
    }
    rows.values().forEach(list -> list.forEach(this::fill));
  }

  /** Paths of all lengths that the text has. */
  public List<String> lengths() {
    return known.values().stream()
        .filter(f -> f.length() && value(f.path()).isPresent())
        .map(Field::path)
        .toList();
  }

  /** Paths of all values that the text has. */
  public List<String> values() {
    return known.keySet().stream().filter(p -> value(p).isPresent()).toList();
  }

  /**
   * Puts the values that bear on something on a card of their own, on top.
   *
   * @param about what they bear on, in words
   * @param paths of the values; none takes the card away
   */
  public void bearing(String about, List<String> paths) {
    List<Field> fields = new ArrayList<>();
    paths.forEach(
        p ->
            Optional.ofNullable(known.get(p))
                .ifPresent(
                    f ->
                        fields.add(
                            new Field(
                                f.path(),
                                f.title() + "\n" + breakable(f.path()),
                                f.means(),
                                f.hint(),
                                f.choices(),
                                f.length(),
                                f.min(),
                                f.max()))));
    Optional<Card> wanted =
        fields.isEmpty()
            ? Optional.empty()
            : Optional.of(new Card(BEARING, about, List.of(new Card.Group("", fields, "", 0))));
    if (!wanted.equals(bearing)) {
      bearing = wanted;
      build();
      setVvalue(0);
    }
  }

  /** With places at which a line may end, which are not seen. */
  private static String breakable(String path) {
    return path.replace(".", ".\u200b").replace("[", "\u200b[");
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

  private void build() {
    Set<String> open = new HashSet<>(Set.of(BEARING));
    cards
        .getChildren()
        .forEach(
            n -> {
              if (n instanceof TitledPane pane && pane.isExpanded()) {
                open.add(pane.getText());
              }
            });
    rows.clear();
    cards.getChildren().clear();
    List<Card> all = new ArrayList<>();
    bearing.ifPresent(all::add);
    all.addAll(shown);
    for (Card card : all) {
      TitledPane pane = new TitledPane(card.title(), new Region());
      pane.setAnimated(false);
      pane.setExpanded(false);
      pane.expandedProperty().addListener((o, was, is) -> open(pane, card));
      cards.getChildren().add(pane);
      pane.setExpanded(open.contains(card.title()));
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
    List<FieldRow> made = new ArrayList<>();
    for (Card.Group group : card.groups()) {
      head(group).ifPresent(content.getChildren()::add);
      for (Field field : group.fields()) {
        FieldRow row = new FieldRow(field, changes);
        made.add(row);
        fill(row);
        content.getChildren().add(row);
      }
    }
    rows.put(pane, made);
    pane.setContent(content);
  }

  private Optional<Region> head(Card.Group group) {
    if (group.isMore()) {
      Button more = new Button("+ " + group.title());
      more.setId("add-" + group.list());
      more.getStyleClass().add("more");
      more.setOnAction(e -> changes.addTo(group.list(), group.index()));
      return Optional.of(more);
    }
    if (group.title().isEmpty()) {
      return Optional.empty();
    }
    Label title = text(group.title(), "group-title");
    if (!group.isItem()) {
      return Optional.of(title);
    }
    Button away = new Button("take away");
    away.setId("remove-" + group.list() + "[" + group.index() + "]");
    away.getStyleClass().add("more");
    away.setMinWidth(Region.USE_PREF_SIZE);
    away.setOnAction(e -> changes.removeFrom(group.list(), group.index()));
    title.setMaxWidth(Double.MAX_VALUE);
    HBox.setHgrow(title, Priority.ALWAYS);
    HBox line = new HBox(8, title, away);
    line.setAlignment(Pos.BOTTOM_LEFT);
    return Optional.of(line);
  }

  private static Label text(String words, String style) {
    Label label = new Label(words);
    label.setWrapText(true);
    label.setMinHeight(Region.USE_PREF_SIZE);
    label.getStyleClass().add(style);
    return label;
  }
}
