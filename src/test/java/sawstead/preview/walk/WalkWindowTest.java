package sawstead.preview.walk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.atomic.AtomicReference;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import org.junit.jupiter.api.Test;
import sawstead.intake.BriefReader;
import sawstead.preview.Display;
import sawstead.preview.StageTestBase;
import sawstead.preview.Toolkit;

class WalkWindowTest extends StageTestBase {

  private String title() {
    return ((Label) find("#walk-title")).getText();
  }

  private void press(String selector) {
    Display.run(() -> ((Button) find(selector)).fire());
  }

  private void type(String text) {
    Display.run(
        () -> {
          TextField field = (TextField) find("#walk-answer");
          field.setText(text);
          field.fireEvent(new javafx.event.ActionEvent());
        });
  }

  @Test
  void walkedThrough_stoppedAndResumed_writesTheBrief() throws Exception {
    Path file = folder.resolve("shed.yaml");
    AtomicReference<Path> written = new AtomicReference<>();
    stage = Toolkit.call(() -> WalkWindow.stage(file, false, 900, 700, written::set));
    type("Shed");
    press("#walk-inch");
    press("#walk-jobsite");
    assertEquals("table width", title());
    type("many");
    assertTrue(((Label) find("#walk-says")).getText().startsWith("\u2716"));
    type("26-1/2");
    assertEquals("table depth", title());
    press("#walk-back");
    assertEquals("table width", title());
    Display.run(stage::hide);
    stage = Toolkit.call(() -> WalkWindow.stage(file, true, 900, 700, written::set));
    assertEquals("table width", title());
    type("26");
    for (int k = 0; written.get() == null && k < 300; k++) {
      press("#walk-unknown");
    }
    assertEquals(file, written.get());
    assertTrue(Files.exists(file));
    assertEquals(660.4, BriefReader.read(file).saw().orElseThrow().table().width().nominal(), 1e-9);
  }
}
