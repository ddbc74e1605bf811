package sawstead.preview;

import java.nio.file.Path;
import javafx.scene.Node;
import javafx.stage.Stage;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;

/**
 * A test with a window on a real (virtual) display: left out where there is none, and failed by an
 * exception on any thread.
 */
public abstract class StageTestBase {
  @TempDir protected Path folder;

  /** What is tested; hidden after each test. */
  protected Stage stage;

  @BeforeEach
  void display() {
    Display.demand();
  }

  @AfterEach
  void closed() {
    if (stage != null) {
      Display.run(stage::hide);
    }
    Display.demandNoFaults();
  }

  /** The first node of a selector; null if there is none. */
  protected Node find(String selector) {
    return stage.getScene().lookup(selector);
  }

  /** Makes rows and cards that were just shown findable. */
  protected void layout() {
    stage.getScene().getRoot().applyCss();
    stage.getScene().getRoot().layout();
  }
}
