package sawstead.preview.window;

import javafx.scene.control.TabPane;
import javafx.scene.control.TextArea;
import javafx.scene.control.ToggleButton;
import sawstead.preview.Display;
import sawstead.preview.StageTestBase;
import sawstead.preview.Toolkit;

/** A test in which the text of a brief is read or typed in the window. */
abstract class BriefTextTestBase extends StageTestBase {
  /** Opens the drawer, which is where the text is. */
  final TextArea text() {
    Display.run(
        () -> {
          if (find(".brief-drawer") == null) {
            ((ToggleButton) find("#brief")).fire();
          }
          ((TabPane) find(".brief-drawer")).getSelectionModel().select(1);
          layout();
        });
    return (TextArea) Toolkit.call(() -> find("#brief-text"));
  }
}
