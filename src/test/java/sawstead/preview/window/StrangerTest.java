package sawstead.preview.window;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TabPane;
import javafx.scene.control.TextArea;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyCodeCombination;
import javafx.scene.input.KeyCombination;
import org.junit.jupiter.api.Test;
import sawstead.check.Finding;
import sawstead.check.Severity;
import sawstead.preview.Display;
import sawstead.preview.Toolkit;
import sawstead.preview.tags.TagColumn;
import sawstead.preview.text.TextPane;
import sawstead.preview.view.FloorView;
import sawstead.solid.Vec;

/** What somebody does who has not read how it is meant to be used. */
class StrangerTest extends BriefTextTestBase {
  private static final int LATIN_HALF = 0xbd;

  /** A pin is higher than that, pixels. */
  private static final double EDGE = 45;

  private void open(Path file) {
    stage = Toolkit.call(() -> Window.stage(file, false, 1000, 700));
  }

  private Path flawed(String model) throws Exception {
    return Files.copy(Path.of("models/flawed", model + ".yaml"), folder.resolve(model + ".yaml"));
  }

  private String words(String label) {
    return ((Label) find(label)).getText();
  }

  private void openJudged(Path file) {
    open(file);
    Display.until("it is judged", () -> find(".hang-tag") != null && !find(".busy").isVisible());
  }

  private void ask() {
    assertTrue(Toolkit.call(() -> ((TagColumn) find(".tag-column")).change(0)));
  }

  private String said(String selector) {
    return Toolkit.call(
        () -> {
          layout();
          return stage.getScene().getRoot().lookupAll(selector).stream()
              .filter(Node::isVisible)
              .map(n -> ((Label) n).getText())
              .collect(Collectors.joining("\n"));
        });
  }

  @Test
  void saveOfAFileThatCouldNotBeRead_leavesItAlone() throws Exception {
    Path file = folder.resolve("latin.yaml");
    byte[] bytes = {'n', 'a', 'm', 'e', ':', ' ', (byte) LATIN_HALF, '\n'};
    Files.write(file, bytes);
    open(file);
    Display.until("it is told", () -> words("#news").contains("UTF-8"));
    Display.run(() -> ((Button) find("#save")).fire());
    assertArrayEquals(bytes, Files.readAllBytes(file), "nothing was read, so nothing is written");
    assertTrue(words("#news").contains("not saved"), words("#news"));
  }

  @Test
  void fileReplacedByOneThatCannotBeRead_isNotSaidToBeRead() throws Exception {
    Path file = flawed("near-hand");
    openJudged(file);
    Files.write(file, new byte[] {'a', (byte) LATIN_HALF});
    Display.until("it is told", () -> !words("#news").startsWith("drag to turn"));
    assertTrue(words("#news").contains("UTF-8"), words("#news"));
  }

  @Test
  void askedWhatMendsIt_whileTheTextIsNoStation_claimsNothing() throws Exception {
    openJudged(flawed("near-hand"));
    TextArea area = text();
    Display.run(() -> area.setText(area.getText().replace("width: 640", "width: wide")));
    Display.until("it is no station", () -> words("#verdict").equals("no station yet"));
    ask();
    Display.until("nothing is tried", () -> !find(".busy").isVisible());
    assertEquals("", said(".mend-says"));
    assertTrue(words("#news").contains("put right"), words("#news"));
  }

  @Test
  void askedWhatMendsIt_whileItIsStillBeingChecked_doesNotSayThatNothingDoes() throws Exception {
    openJudged(flawed("near-hand"));
    TextArea area = text();
    Display.run(() -> area.appendText("# measured again\n"));
    ask();
    assertTrue(words("#news").contains("still being checked"), words("#news"));
    Display.until("all is quiet", () -> !find(".busy").isVisible());
    assertFalse(said(".card-means").contains("no single value mends it"), said(".card-means"));
  }

  @Test
  void pinNearTheUpperEdge_staysOnTheFloor() throws Exception {
    openJudged(flawed("near-hand"));
    FloorView floor = (FloorView) find(".room");
    Display.run(
        () -> {
          Vec at = new Vec(0, 0, 0);
          while (projected(floor, at) > EDGE) {
            at = new Vec(0, 0, at.z() + 5);
          }
          Finding finding =
              new Finding(Severity.STOP, "pin", List.of(), Optional.of(at), "it is here", "look");
          floor.hang(List.of(finding), f -> {});
          layout();
          for (Node child : floor.getChildrenUnmodifiable()) {
            assertTrue(child.getBoundsInParent().getMinY() >= 0, child + " stands out above");
          }
        });
  }

  private static double projected(FloorView floor, Vec at) {
    return floor.eye().project(at, floor.getWidth(), floor.getHeight()).orElseThrow().y();
  }

  @Test
  void strayBrackets_areToldAtTheirLine_andTheFormGoesOn() throws Exception {
    openJudged(flawed("near-hand"));
    TextArea area = text();
    String whole = area.getText();
    List<String> typed =
        List.of("}", "{a: b}", "? ", "[".repeat(5000), "\t", "&a *a", "", "\ufeff");
    for (String letters : typed) {
      Display.run(
          () -> {
            area.setText(letters.isEmpty() ? "" : whole.replaceFirst("\n", "\n" + letters + "\n"));
            ((TabPane) find(".brief-drawer")).getSelectionModel().select(0);
            ((TabPane) find(".brief-drawer")).getSelectionModel().select(1);
          });
      Display.until("it is read", () -> !find(".busy").isVisible());
    }
    Display.run(() -> area.setText(whole));
    Display.until("it is judged", () -> words("#verdict").startsWith("do not cut"));
  }

  @Test
  void fileBecomesAFolder_isTold_andSavingLeavesIt() throws Exception {
    Path file = flawed("near-hand");
    openJudged(file);
    Files.delete(file);
    Files.createDirectory(file);
    Display.until("it is told", () -> words("#news").contains("folder"));
    Display.run(() -> ((Button) find("#save")).fire());
    assertTrue(Files.isDirectory(file));
    assertTrue(words("#news").contains("not saved"), words("#news"));
    assertTrue(words("#news").contains("folder"), words("#news"));
  }

  @Test
  void readAgain_whileSomethingIsTyped_isTakenBackByUndo_andIsSaid() throws Exception {
    Path file = flawed("near-hand");
    openJudged(file);
    TextArea area = text();
    String before = area.getText();
    Display.run(() -> area.appendText("# an hour's work\n"));
    press(KeyCode.R);
    assertEquals(before, Toolkit.call(area::getText));
    assertTrue(words("#news").contains("Ctrl+Z"), words("#news"));
    press(KeyCode.Z);
    assertEquals(before + "# an hour's work\n", Toolkit.call(area::getText));
  }

  private void press(KeyCode letter) {
    Display.run(
        () ->
            stage
                .getScene()
                .getAccelerators()
                .get(new KeyCodeCombination(letter, KeyCombination.SHORTCUT_DOWN))
                .run());
  }

  @Test
  void fileChangedJustBeforeTheWindowIsClosed_isNotReadAnyMore() throws Exception {
    Path file = flawed("near-hand");
    List<String> read = new ArrayList<>();
    Display.run(
        () -> {
          OnDisk disk =
              new OnDisk(
                  file,
                  new TextPane(),
                  new NewsLine(new BusySign()),
                  read::add,
                  (what, remedy) -> read.add(what));
          try {
            Files.writeString(file, "name: other\n");
            // The watch has seen it then, and waits for this very thread to say so.
            Thread.sleep(1500);
          } catch (IOException | InterruptedException e) {
            throw new IllegalStateException(e);
          }
          disk.close();
        });
    Display.run(() -> {});
    assertEquals(List.of(), read, "nobody looks at it any more");
  }
}
