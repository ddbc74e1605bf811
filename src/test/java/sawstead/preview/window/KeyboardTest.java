package sawstead.preview.window;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.TabPane;
import javafx.scene.control.TextArea;
import javafx.scene.control.TitledPane;
import javafx.scene.control.ToggleButton;
import javafx.scene.input.KeyCode;
import javafx.scene.robot.Robot;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import sawstead.preview.Display;
import sawstead.preview.Toolkit;

/** The whole window without a mouse: real keys, as the keyboard sends them. */
class KeyboardTest extends BriefTextTestBase {
  private static final int MOST = 200;

  @BeforeEach
  void opened() throws Exception {
    Path file =
        Files.copy(Path.of("models/flawed/near-hand.yaml"), folder.resolve("near-hand.yaml"));
    stage = Toolkit.call(() -> Window.stage(file, false, 1200, 760));
    Display.until("it is judged", () -> find(".hang-tag") != null && !find(".busy").isVisible());
    Display.until("it has the keys", () -> stage.isFocused());
  }

  private void press(KeyCode... keys) {
    Display.run(
        () -> {
          Robot robot = new Robot();
          for (KeyCode key : keys) {
            robot.keyPress(key);
          }
          for (int k = keys.length - 1; k >= 0; k--) {
            robot.keyRelease(keys[k]);
          }
        });
    // What the keys do comes to the window's thread on its own.
    Node[] last = {null};
    for (int same = 0; same < 3; same++) {
      Node now = owner();
      same = now == last[0] ? same : 0;
      last[0] = now;
      pause();
    }
  }

  private static void pause() {
    try {
      Thread.sleep(15);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  private Node owner() {
    return Toolkit.call(() -> stage.getScene().getFocusOwner());
  }

  private void focus(String selector) {
    Display.run(() -> find(selector).requestFocus());
  }

  @Test
  void tabInTheText_goesOn_shiftTabBack_andNoTabIsTyped() {
    TextArea text = text();
    String before = text.getText();
    focus("#brief-text");
    press(KeyCode.TAB);
    assertTrue(owner() != text, "Tab is the way out");
    assertEquals(before, Toolkit.call(text::getText), "a brief may have no tabs");
    press(KeyCode.SHIFT, KeyCode.TAB);
    assertEquals(text, owner());
    press(KeyCode.SHIFT, KeyCode.TAB);
    assertEquals(find(".brief-drawer"), owner());
    assertEquals(before, Toolkit.call(text::getText));
  }

  @Test
  void escape_closesTheBrief_andTheFloorHasTheKeys() {
    text();
    focus("#brief-text");
    press(KeyCode.ESCAPE);
    assertNull(Toolkit.call(() -> find(".brief-drawer")));
    assertEquals(find(".room"), owner());
    assertFalse(((ToggleButton) find("#brief")).isSelected());
    press(KeyCode.CONTROL, KeyCode.B);
    focus(".brief-drawer");
    press(KeyCode.CONTROL, KeyCode.B);
    assertEquals(find(".room"), owner(), "closed with its own key it leaves the keys likewise");
  }

  @Test
  void escape_putsTheCaliperAway_beforeItClosesTheBrief() {
    text();
    ToggleButton measure = (ToggleButton) find("#measure");
    for (String from : List.of("#measure", ".room", "#brief-text")) {
      Display.run(measure::fire);
      assertTrue(measure.isSelected());
      focus(from);
      press(KeyCode.ESCAPE);
      assertFalse(measure.isSelected(), "put away from " + from);
      assertTrue(Toolkit.call(() -> find(".brief-drawer") != null), "the brief stays: " + from);
    }
    press(KeyCode.ESCAPE);
    assertNull(Toolkit.call(() -> find(".brief-drawer")));
    press(KeyCode.ESCAPE);
    assertEquals(find(".room"), owner());
  }

  @Test
  void tab_reachesEverything_andShiftTabComesBackTheSameWay() {
    everythingIsReached();
    text();
    everythingIsReached();
  }

  private void everythingIsReached() {
    focus("#open");
    List<Node> there = round(KeyCode.TAB);
    Set<Node> all = Toolkit.call(() -> wanting(stage.getScene().getRoot()));
    all.removeAll(there);
    assertEquals(Set.of(), all, "not reached");
    focus("#open");
    List<Node> back = round(KeyCode.SHIFT, KeyCode.TAB);
    Collections.reverse(back.subList(1, back.size()));
    assertEquals(there, back);
  }

  @Test
  void aListThatGrowsOrShrinks_leavesTheKeysWhereTheyWere() {
    openCard("saw");
    focusId("add-saw.slots");
    press(KeyCode.ENTER);
    Display.until("there is another slot", () -> byId("remove-saw.slots[1]") != null);
    assertEquals("add-saw.slots", owner().getId());
    focusId("remove-saw.slots[1]");
    press(KeyCode.ENTER);
    Display.until("it is gone", () -> byId("remove-saw.slots[1]") == null);
    assertEquals("add-saw.slots", owner().getId(), "the nearest that is left");
  }

  @Test
  void typedIntoASectionThatIsNotWrittenYet_arrivesWhole() {
    openCard("saw");
    TextArea text = text();
    Display.run(() -> ((TabPane) find(".brief-drawer")).getSelectionModel().select(0));
    Display.run(
        () -> {
          layout();
          byId("row-saw.body.left").lookup(".text-field").requestFocus();
        });
    press(KeyCode.DIGIT2);
    press(KeyCode.DIGIT7);
    press(KeyCode.DIGIT0);
    String written = Toolkit.call(text::getText);
    assertTrue(written.contains("body: {left: 270}"), written);
  }

  @Test
  void tagsHungAgain_leaveTheKeysOnTheSameOne() {
    focus(".margin-bar");
    Node bar = owner();
    int at = bar.getParent().getChildrenUnmodifiable().indexOf(bar);
    press(KeyCode.CONTROL, KeyCode.D);
    Display.until("they are hung again", () -> bar.getScene() == null);
    assertEquals(at, owner().getParent().getChildrenUnmodifiable().indexOf(owner()));
  }

  @Test
  void aNarrowWindow_whereTheBriefTakesTheRoomOfTheTags_losesNoKeys() {
    Display.run(() -> stage.setWidth(900));
    focus(".hang-tag");
    press(KeyCode.CONTROL, KeyCode.B);
    assertNull(Toolkit.call(() -> find(".hang-tag")));
    assertEquals(find(".room"), owner());
  }

  private void openCard(String title) {
    Display.run(
        () -> {
          ((ToggleButton) find("#brief")).fire();
          layout();
          find(".brief-drawer").lookupAll(".titled-pane").stream()
              .map(n -> (TitledPane) n)
              .filter(pane -> pane.getText().equals(title))
              .forEach(pane -> pane.setExpanded(true));
          layout();
        });
  }

  private Node byId(String id) {
    layout();
    return find(".brief-drawer").lookupAll("*").stream()
        .filter(n -> id.equals(n.getId()))
        .findFirst()
        .orElse(null);
  }

  private void focusId(String id) {
    Display.run(() -> byId(id).requestFocus());
  }

  /** From where the keys are, until they are there again. */
  private List<Node> round(KeyCode... keys) {
    List<Node> met = new ArrayList<>(List.of(owner()));
    for (int k = 0; k < MOST; k++) {
      press(keys);
      Node now = owner();
      assertTrue(now != null && now != met.get(met.size() - 1), "the keys stay at " + now);
      if (now == met.get(0)) {
        return met;
      }
      met.add(now);
    }
    throw new AssertionError("no way round: " + met);
  }

  /** What wants to be reached. */
  private static Set<Node> wanting(Node node) {
    Set<Node> all = new LinkedHashSet<>();
    if (node.isVisible() && !node.isDisabled()) {
      if (node.isFocusTraversable()) {
        all.add(node);
      }
      if (node instanceof Parent parent) {
        parent.getChildrenUnmodifiable().forEach(child -> all.addAll(wanting(child)));
      }
    }
    return all;
  }
}
