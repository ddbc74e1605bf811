package sawstead.preview.window;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.control.Control;
import javafx.scene.control.Label;
import javafx.scene.control.Labeled;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextField;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToolBar;
import javafx.scene.input.KeyCode;
import javafx.scene.text.Text;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import sawstead.preview.Display;
import sawstead.preview.Toolkit;
import sawstead.preview.look.Magnifier;
import sawstead.preview.tags.TagColumn;

/** The window in a small place, shown large: everything is still there to be read and reached. */
class LargeWindowTest extends BriefTextTestBase {
  private static final double WIDTH = 1280;
  private static final double HEIGHT = 800;

  private Path open(String model, double times) throws Exception {
    Path file = folder.resolve(model + ".yaml");
    Files.copy(Path.of("models/flawed", model + ".yaml"), file);
    stage = Toolkit.call(() -> Window.stage(file, false, WIDTH, HEIGHT));
    Display.run(() -> ((Magnifier) stage.getScene().getRoot()).times(times));
    quiet();
    return file;
  }

  private void quiet() {
    Display.until("all is quiet", () -> judged() && !find(".busy").isVisible());
    Display.run(this::layout);
  }

  private boolean judged() {
    return !((Label) find("#verdict")).getText().startsWith("reading");
  }

  private void ask() {
    Toolkit.call(() -> ((TagColumn) find(".tag-column")).change(0));
    quiet();
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.8, 1, 1.5, 1.75, 2})
  void everyButtonOfTheTopBar_isWholeOrBehindTheArrow(double times) throws Exception {
    open("shelf-over-lid", times);
    Display.run(
        () -> {
          Node bar = find(".top-bar");
          for (Node row : bar.lookupAll(".tool-bar")) {
            long hidden =
                ((ToolBar) row).getItems().stream().filter(n -> n.getScene() == null).count();
            boolean arrow = row.lookup(".tool-bar-overflow-button").isVisible();
            assertEquals(arrow, hidden > 0, "what is not shown is behind the arrow");
          }
          List<Node> seen =
              bar.lookupAll("*").stream()
                  .filter(n -> n instanceof Control && !(n instanceof ToolBar) && n.isVisible())
                  .collect(Collectors.toList());
          assertTrue(seen.size() > 12, seen.size() + " controls");
          for (Node node : seen) {
            Bounds at = node.localToScene(node.getLayoutBounds());
            assertTrue(at.getMinX() >= 0 && at.getMaxX() <= WIDTH, node + " leaves: " + at);
            boolean button = node.getStyleClass().contains("big") || "verdict".equals(node.getId());
            assertFalse(button && cut((Labeled) node), node + " is cut short");
          }
        });
  }

  /** Whether what is shown is less than what was written. */
  private static boolean cut(Labeled labeled) {
    Set<Node> texts = labeled.lookupAll(".text");
    return texts.stream()
        .filter(Text.class::isInstance)
        .noneMatch(n -> ((Text) n).getText().equals(labeled.getText()));
  }

  @Test
  void openBrief_shownLarge_leavesRoomForTheStation() throws Exception {
    open("shelf-over-lid", 1.5);
    ask();
    Display.run(
        () -> {
          layout();
          Bounds floor = find(".room").localToScene(find(".room").getLayoutBounds());
          assertTrue(floor.getWidth() >= WIDTH / 3, "the floor is " + floor.getWidth() + " wide");
          assertNull(find(".tag-column"), "the brief has the room of the tags");
          Node focus = stage.getScene().getFocusOwner();
          assertNotNull(focus, "the keyboard is somewhere");
          ((ToggleButton) find("#brief")).fire();
          layout();
          assertNotNull(find(".tag-column"), "the tags are back");
        });
  }

  @Test
  void valueThatMendsIt_shownLarge_isInView() throws Exception {
    open("shelf-over-lid", 1.5);
    ask();
    Display.run(
        () -> {
          layout();
          Node scroll = find(".form-scroll");
          Bounds view =
              ((ScrollPane) scroll)
                  .lookup(".viewport")
                  .localToScene(((ScrollPane) scroll).lookup(".viewport").getLayoutBounds());
          Node says = find(".mend-says");
          assertNotNull(says, "what mends it is told");
          Bounds at = says.localToScene(says.getLayoutBounds());
          assertTrue(view.getHeight() >= 200, "the fields have " + view.getHeight());
          assertTrue(view.contains(at.getCenterX(), at.getCenterY()), at + " is out of " + view);
          assertTrue(at.getMaxX() <= WIDTH, at + " leaves the window");
        });
  }

  @Test
  void emptiedField_thatIsLeft_showsTheValueThatHolds() throws Exception {
    open("shelf-over-lid", 1);
    ask();
    TextField field = (TextField) find(".field-row .text-field");
    String was = field.getText();
    Display.run(field::requestFocus);
    Display.run(field::clear);
    assertEquals("", field.getText(), "it may be empty while somebody types");
    Display.run(() -> find(".room").requestFocus());
    assertEquals(was, field.getText());
  }

  @Test
  void undo_whileTheFieldHasTheFocus_isShownInIt() throws Exception {
    open("shelf-over-lid", 1);
    ask();
    TextField field = (TextField) find(".field-row .text-field");
    String was = field.getText();
    Display.run(field::requestFocus);
    Display.run(() -> field.setText("755"));
    Display.run(() -> fire(KeyCode.Z));
    assertEquals(was, field.getText());
  }

  private void fire(KeyCode code) {
    stage.getScene().getAccelerators().entrySet().stream()
        .filter(e -> e.getKey().getName().toUpperCase(Locale.ROOT).endsWith("+" + code.getName()))
        .forEach(e -> e.getValue().run());
  }
}
