package sawstead.preview.form;

import java.util.ArrayList;
import java.util.HashMap;
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
import sawstead.preview.bench.Dial;
import sawstead.preview.bench.Trial;
import sawstead.preview.look.Prose;

/** The form: a card for each thing, opened when one wants it. */
public final class FormPane extends ScrollPane {
  private final VBox cards = new VBox(10);
  private final Changes changes;
  private final Map<TitledPane, List<FieldRow>> rows = new LinkedHashMap<>();
  private final Map<String, Field> known = new LinkedHashMap<>();

  /** What each is a value of, in words. */
  private final Map<String, String> places = new HashMap<>();

  private List<Card> shown = List.of();
  private Map<String, BriefSpans.Span> spans = Map.of();
  private Optional<MendPane> mend = Optional.empty();

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

    /** Somebody is about to change a value, or has opened the card that it is the first of. */
    void attend(String path);
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
    List<Card> wanted = Cards.of(BriefSchema.expanded(), now.keySet(), unit());
    if (!wanted.equals(shown)) {
      shown = wanted;
      known.clear();
      places.clear();
      wanted.forEach(c -> c.groups().forEach(g -> g.fields().forEach(f -> learn(c, g, f))));
      build();
    }
    rows.values().forEach(list -> list.forEach(this::fill));
    mend.ifPresent(m -> m.follow(plain(), unit()));
  }

  private void learn(Card card, Card.Group group, Field field) {
    known.put(field.path(), field);
    String of = group.title().isEmpty() ? card.title() : group.title();
    places.put(field.path(), field.title().contains(of) ? "" : of);
  }

  /** Paths of all values that the text has. */
  public List<String> values() {
    return known.keySet().stream().filter(p -> value(p).isPresent()).toList();
  }

  /**
   * What may be tried: every number that is written, and every choice in a section that is written,
   * whether it is or not.
   */
  public List<Dial> dials() {
    List<Dial> dials = new ArrayList<>();
    for (Field field : known.values()) {
      Optional<String> value = value(field.path());
      if (!field.choices().isEmpty() && isChoice(field)) {
        dials.add(new Dial.Words(field.path(), field.choices()));
      } else {
        value.flatMap(v -> Range.dial(field, v, unit())).ifPresent(dials::add);
      }
    }
    return dials;
  }

  /** Not the words that stand for a whole section, nor those of the whole brief. */
  private boolean isChoice(Field field) {
    int dot = field.path().lastIndexOf('.');
    return dot > 0
        && spans.containsKey(field.path().substring(0, dot))
        && !field.choices().contains(Field.WRITE_OUT);
  }

  /**
   * Begins a card of what can be done about something, on top.
   *
   * @param about what to do, in words
   */
  public void tryOut(String about) {
    mend = Optional.of(new MendPane(about, plain(), changes));
    build();
    setVvalue(0);
  }

  /** Puts a value that was tried on that card. */
  public void tried(Trial trial) {
    Optional.ofNullable(known.get(trial.path()))
        .ifPresent(field -> mend.ifPresent(m -> m.add(trial, field, place(field.path()))));
    mend.ifPresent(m -> m.follow(plain(), unit()));
  }

  /** Ends it: all values were tried, or not. */
  public void triedAll(boolean all) {
    mend.ifPresent(m -> m.complete(all));
  }

  private Map<String, String> plain() {
    Map<String, String> plain = new LinkedHashMap<>();
    spans.forEach((path, span) -> span.value().ifPresent(v -> plain.put(path, v)));
    return plain;
  }

  /** What a value is one of, in words, with the name that the brief gives it. */
  private String place(String path) {
    String of = places.getOrDefault(path, "");
    for (int end = path.lastIndexOf(']'); end > 0; end = path.lastIndexOf(']', end - 1)) {
      String item = path.substring(0, end + 1);
      Optional<String> name = value(item + ".id").or(() -> value(item + ".name"));
      if (name.isPresent()) {
        return name.get() + (of.isEmpty() ? "" : ": " + of);
      }
    }
    return of;
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
    Optional<HeldKeys> keys = HeldKeys.in(this);
    Set<String> open = new HashSet<>();
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
    mend.ifPresent(cards.getChildren()::add);
    for (Card card : shown) {
      TitledPane pane = new TitledPane(card.title(), new Region());
      pane.setAnimated(false);
      pane.setExpanded(false);
      pane.expandedProperty().addListener((o, was, is) -> open(pane, card));
      cards.getChildren().add(pane);
      pane.setExpanded(open.contains(card.title()));
    }
    keys.ifPresent(k -> k.giveBack(this));
  }

  /** Rows are made when a card is first opened: there are some hundreds of them. */
  private void open(TitledPane pane, Card card) {
    if (!pane.isExpanded() || pane.getContent() instanceof VBox) {
      return;
    }
    VBox content = new VBox(6);
    content.getStyleClass().add("card");
    if (!card.means().isEmpty()) {
      content.getChildren().add(Prose.of(card.means(), "card-means"));
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
    made.stream().findFirst().ifPresent(row -> changes.attend(row.field().path()));
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
    Label title = Prose.of(group.title(), "group-title");
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
}
