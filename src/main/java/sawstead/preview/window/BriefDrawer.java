package sawstead.preview.window;

import java.util.List;
import javafx.scene.control.Tab;
import javafx.scene.control.TabPane;
import sawstead.intake.BriefEdit;
import sawstead.preview.bench.Flaw;
import sawstead.preview.form.FormPane;
import sawstead.preview.look.Tokens;
import sawstead.preview.text.TextPane;

/** The brief at the window's right edge: as a form and as text, which stay in step. */
final class BriefDrawer extends TabPane {
  private static final double WIDTH = 520;

  private final TextPane text = new TextPane();
  private final FormPane form = new FormPane(this::filled);

  BriefDrawer() {
    getStyleClass().add("brief-drawer");
    setPrefWidth(WIDTH);
    setMinWidth(380);
    setTabClosingPolicy(TabClosingPolicy.UNAVAILABLE);
    Tab asForm = new Tab("Brief as a form", form);
    asForm.setId("form-tab");
    Tab asText = new Tab("as text", text);
    asText.setId("text-tab");
    getTabs().addAll(asForm, asText);
    text.textProperty().addListener((o, was, is) -> followLater());
    getSelectionModel().selectedItemProperty().addListener(o -> followLater());
  }

  TextPane text() {
    return text;
  }

  void tell(List<Flaw> flaws) {
    text.tell(flaws);
  }

  private void followLater() {
    if (getSelectionModel().getSelectedIndex() == 0) {
      form.follow(text.textProperty().get());
    }
  }

  /** Puts one value into the text, and nothing else. */
  private void filled(String path, String value) {
    BriefEdit.set(text.textProperty().get(), path, value)
        .ifPresent(edit -> text.replace(edit.from(), edit.to(), edit.with()));
  }

  void look(Tokens tokens) {
    text.look(tokens);
  }
}
