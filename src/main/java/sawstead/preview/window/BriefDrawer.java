package sawstead.preview.window;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.scene.control.Tab;
import javafx.scene.control.TabPane;
import javafx.scene.layout.BorderPane;
import sawstead.intake.BriefEdit;
import sawstead.intake.BriefSchema;
import sawstead.intake.ListEdit;
import sawstead.preview.bench.Flaw;
import sawstead.preview.form.FormPane;
import sawstead.preview.look.Tokens;
import sawstead.preview.sketch.DrawnPicture;
import sawstead.preview.text.TextPane;
import sawstead.walk.Drawings;

/** The brief at the window's right edge: as a form and as text, which stay in step. */
final class BriefDrawer extends TabPane {
  private static final double WIDTH = 500;
  private static final double LEAST_WIDTH = 380;

  /** Of the window. */
  private static final double SHARE = 0.39;

  private static final double PICTURE_HEIGHT = 130;

  /** In a drawer lower than that, pixels, the fields have the room of the picture. */
  private static final double LOW = 400;

  private final TextPane text = new TextPane();
  private final DrawnPicture picture = new DrawnPicture();
  private final FormPane form = new FormPane(new Edits());
  private final Consumer<String> preview;

  /**
   * @param preview is told of texts that would be, while a slider is being dragged
   */
  BriefDrawer(Consumer<String> preview) {
    this.preview = preview;
    getStyleClass().add("brief-drawer");
    setPrefWidth(WIDTH);
    setMinWidth(LEAST_WIDTH);
    setTabClosingPolicy(TabClosingPolicy.UNAVAILABLE);
    picture.setId("measured");
    picture.setMinHeight(PICTURE_HEIGHT);
    picture.setMaxHeight(PICTURE_HEIGHT);
    // Always there, below: what comes and goes would move the slider under somebody's hand.
    sketch("");
    BorderPane both = new BorderPane(form);
    both.setBottom(picture);
    heightProperty()
        .addListener(
            (o, was, is) -> {
              picture.setVisible(is.doubleValue() >= LOW);
              picture.setManaged(is.doubleValue() >= LOW);
            });
    Tab asForm = new Tab("Brief as a form", both);
    asForm.setId("form-tab");
    Tab asText = new Tab("as text", text);
    asText.setId("text-tab");
    getTabs().addAll(asForm, asText);
    text.textProperty().addListener((o, was, is) -> followLater());
    getSelectionModel().selectedItemProperty().addListener(o -> followLater());
  }

  /** Takes its share of a window's width, pixels. */
  void share(double window) {
    setPrefWidth(Math.max(LEAST_WIDTH, Math.min(WIDTH, SHARE * window)));
  }

  /** Draws what a value measures, or the whole station where it is of no thing that is drawn. */
  private void sketch(String path) {
    picture.show(Drawings.orWhole(path));
  }

  TextPane text() {
    return text;
  }

  void tell(List<Flaw> flaws) {
    text.tell(flaws);
  }

  /** The form, brought up to date although it may not be seen yet. */
  FormPane form() {
    form.follow(text.textProperty().get());
    return form;
  }

  /** Shows the form rather than the text. */
  void showForm() {
    getSelectionModel().select(0);
  }

  private void followLater() {
    if (getSelectionModel().getSelectedIndex() == 0) {
      form.follow(text.textProperty().get());
    }
  }

  /** Each puts one change into the text, and nothing else. */
  private final class Edits implements FormPane.Changes {
    private String now() {
      return text.textProperty().get();
    }

    private void make(Optional<BriefEdit> change) {
      change.ifPresent(edit -> text.replace(edit.from(), edit.to(), edit.with()));
    }

    @Override
    public void set(String path, String value) {
      make(BriefEdit.set(now(), path, value));
    }

    @Override
    public void wouldSet(String path, String value) {
      BriefEdit.set(now(), path, value).ifPresent(edit -> preview.accept(edit.in(now())));
    }

    @Override
    public void writeOut(String path) {
      var schema = BriefSchema.at(path);
      make(ListEdit.writeOut(now(), path, ListEdit.sectionExample(schema, 1)));
    }

    @Override
    public void addTo(String list, int number) {
      make(ListEdit.add(now(), list, ListEdit.example(BriefSchema.at(list), number + 1)));
    }

    @Override
    public void removeFrom(String list, int index) {
      make(ListEdit.remove(now(), list, index));
    }

    @Override
    public void attend(String path) {
      sketch(path);
    }
  }

  void look(Tokens tokens) {
    text.look(tokens);
    picture.look(tokens);
  }
}
