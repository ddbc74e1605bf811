package sawstead.preview.window;

import java.util.List;
import javafx.scene.control.Tab;
import javafx.scene.control.TabPane;
import sawstead.preview.bench.Flaw;
import sawstead.preview.bench.Snapshot;
import sawstead.preview.look.Tokens;
import sawstead.preview.text.TextPane;

/** The brief at the window's right edge: as text. */
final class BriefDrawer extends TabPane {
  private static final double WIDTH = 520;

  private final TextPane text = new TextPane();

  BriefDrawer() {
    getStyleClass().add("brief-drawer");
    setPrefWidth(WIDTH);
    setMinWidth(380);
    setTabClosingPolicy(TabClosingPolicy.UNAVAILABLE);
    getTabs().add(new Tab("Brief as text", text));
  }

  TextPane text() {
    return text;
  }

  void tell(List<Flaw> flaws) {
    text.tell(flaws);
  }

  void show(Snapshot snapshot) {
    // The form follows the text here.
  }

  void look(Tokens tokens) {
    text.look(tokens);
  }
}
