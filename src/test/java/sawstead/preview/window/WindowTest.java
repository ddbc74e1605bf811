package sawstead.preview.window;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.prefs.Preferences;
import javafx.scene.Node;
import javafx.scene.canvas.Canvas;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.Slider;
import javafx.scene.control.TabPane;
import javafx.scene.control.TextArea;
import javafx.scene.control.TextField;
import javafx.scene.control.TitledPane;
import javafx.scene.control.ToggleButton;
import javafx.scene.robot.Robot;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import sawstead.assembly.BuildStep;
import sawstead.check.Report;
import sawstead.check.Words;
import sawstead.measure.Unit;
import sawstead.preview.Display;
import sawstead.preview.Toolkit;
import sawstead.preview.bench.Bench;
import sawstead.preview.caliper.Spot;
import sawstead.preview.look.SharpCanvas;
import sawstead.preview.scene.Demo;
import sawstead.preview.scene.Eye;
import sawstead.preview.sketch.DrawnPicture;
import sawstead.preview.tags.TagColumn;
import sawstead.preview.tape.Run;
import sawstead.preview.tape.Tape;
import sawstead.preview.view.FloorView;
import sawstead.solid.Body;
import sawstead.solid.Box;
import sawstead.solid.Vec;
import sawstead.station.Station;
import sawstead.walk.Drawings;

/** A real window on a real (virtual) display, used as a person would. */
class WindowTest extends BriefTextTestBase {
  private Path file;

  private void open(String demo) throws Exception {
    file = Demo.copy(demo, folder);
    stage = Toolkit.call(() -> Window.stage(file, false, 1280, 600));
    Display.until("it is judged", () -> !verdict().startsWith("reading"));
  }

  private String verdict() {
    return ((Label) find("#verdict")).getText();
  }

  private String height() {
    return ((Label) find("#height")).getText();
  }

  private String news() {
    return ((Label) find("#news")).getText();
  }

  private FloorView floor() {
    return (FloorView) find(".room");
  }

  @ParameterizedTest
  @ValueSource(strings = {"first-brief", "granary-loft", "quay-shed"})
  void everyDemo_opensAndSaysItsHeight(String demo) throws Exception {
    open(demo);
    assertTrue(height().contains("working height"), height());
    assertTrue(floor().floor().station().parts().size() > 20);
  }

  @Test
  void tape_pulled_opensTheLid_andPlayingIsLikewise() throws Exception {
    open("lantern-alley");
    Tape tape = (Tape) find("#tape");
    Display.run(() -> tape.valueProperty().set(80));
    String mover = floor().floor().station().movers().get(0).id();
    assertTrue(floor().floor().arrangement().movers().containsValue(80.0), mover);
    Display.run(() -> ((Button) find("#play")).fire());
    Display.until("the lid moves", () -> tape.valueProperty().get() > 0);
    Display.run(() -> ((Button) find("#play")).fire());
  }

  @Test
  void tag_clicked_fliesThere() throws Exception {
    open("lantern-alley");
    Eye before = floor().eye();
    assertTrue(Toolkit.call(() -> ((TagColumn) find(".tag-column")).choose(0)));
    Display.until("the eye has moved", () -> !floor().eye().equals(before));
    Display.run(() -> ((Slider) find("#spread")).setValue(0.5));
    assertEquals(0.5, floor().floor().arrangement().spread());
    Display.run(() -> ((Button) find("#stand-above")).fire());
  }

  @Test
  void height_typedUndoneRedoneAndSaved() throws Exception {
    open("lantern-alley");
    TextArea area = text();
    String before = area.getText();
    int at = before.indexOf("workingHeight: 38") + "workingHeight: ".length();
    Display.run(() -> area.replaceText(at, at + 2, "37"));
    Display.until("the new height is judged", () -> height().contains("37 in"));
    assertTrue(news().contains("working height 38 \u2192 37 in"), news());
    Display.run(area::undo);
    Display.until("the old height is back", () -> height().contains("38 in"));
    Display.run(area::redo);
    Display.until("and gone again", () -> height().contains("37 in"));
    Display.run(() -> ((Button) find("#save")).fire());
    String expected = before.substring(0, at) + "37" + before.substring(at + 2);
    assertEquals(expected, Files.readString(file), "only the two digits differ");
  }

  @Test
  void malformedText_keepsTheFloorAndNamesTheLine() throws Exception {
    open("first-brief");
    var shown = floor().floor();
    TextArea area = text();
    Display.run(() -> area.setText(area.getText().replace("units:", "unites:")));
    Display.until("it is told", () -> news().contains("no station yet"));
    assertEquals(shown, floor().floor());
    Display.until("its line is marked", () -> find(".flaw") != null);
  }

  @Test
  void fileChangedOnDisk_isReadAgain_andGoneIsTold() throws Exception {
    open("lantern-alley");
    String text = Files.readString(file);
    Files.writeString(file, text.replace("workingHeight: 38", "workingHeight: 39"));
    Display.until("the new file is judged", () -> height().contains("39 in"));
    Files.delete(file);
    Display.until("it is told", () -> news().contains("gone"));
    assertTrue(height().contains("39 in"));
    Display.run(() -> ((Button) find("#save")).fire());
    assertTrue(Files.exists(file), "saving writes it again");
  }

  @Test
  void changedOnDiskWhileTyping_losesNothing() throws Exception {
    open("first-brief");
    TextArea area = text();
    Display.run(() -> area.appendText("# mine\n"));
    Files.writeString(file, "# theirs\n" + Files.readString(file));
    Display.until("it is told", () -> news().contains("somebody else"));
    assertTrue(area.getText().endsWith("# mine\n"));
    assertFalse(area.getText().startsWith("# theirs"));
  }

  @Test
  void formFilledIn_changesItsBytesOnly() throws Exception {
    open("lantern-alley");
    String before = text().getText();
    openCard("station");
    Display.run(() -> field("station.workingHeight").setText("37-1/2"));
    String expected = before.replace("workingHeight: 38", "workingHeight: 37-1/2");
    assertEquals(expected, text().getText());
    Display.until("the new height is shown", () -> height().contains("37-1/2 in"));
  }

  private TextField field(String path) {
    Node row =
        stage.getScene().getRoot().lookupAll(".field-row").stream()
            .filter(n -> ("row-" + path).equals(n.getId()))
            .findFirst()
            .orElseThrow(() -> new AssertionError("no field for " + path));
    return (TextField) row.lookup(".text-field");
  }

  @Test
  void motionFinding_pullsTheTapeToTheContact_andBeyondItTheOverlapIsSolid() throws Exception {
    file = folder.resolve("shelf.yaml");
    Files.copy(Path.of("models/flawed/shelf-over-lid.yaml"), file);
    stage = Toolkit.call(() -> Window.stage(file, false, 900, 600));
    Display.until("it is judged", () -> verdict().startsWith("do not cut"));
    assertTrue(Toolkit.call(() -> ((TagColumn) find(".tag-column")).choose(0)));
    Tape tape = (Tape) find("#tape");
    // The first contact of the finding, which says it in words: 29.6 degrees.
    assertEquals(29.6, tape.valueProperty().get(), 0.1);
    assertEquals(0, floor().floor().sharedCount());
    Display.run(() -> tape.valueProperty().set(60));
    assertTrue(floor().floor().sharedCount() > 0, "the overlap is drawn");
    Display.run(() -> ((ToggleButton) find("#way")).fire());
    assertTrue(floor().floor().pathCount() > 10, "the way is drawn");
    Display.run(() -> tape.valueProperty().set(0));
    assertEquals(0, floor().floor().sharedCount());
  }

  @Test
  void caliper_measuresBetweenTwoFaces_inTheUsersUnits() throws Exception {
    open("lantern-alley");
    Display.run(() -> ((ToggleButton) find("#measure")).fire());
    Station station = floor().floor().station();
    Body top = station.part("stand/top").orElseThrow().body();
    Body base = station.part("stand/base").orElseThrow().body();
    Display.run(
        () -> {
          floor().pointAt(Spot.at(base, top(base), 1));
          floor().pointAt(Spot.at(top, top(top), 1));
        });
    double apart = top.box().high().z() - base.box().high().z();
    String expected = new Words(Unit.INCH).length(apart) + " face to face";
    assertEquals(expected, floor().measured());
    Display.run(() -> ((ToggleButton) find("#measure")).fire());
    assertEquals("", floor().measured());
  }

  private static Vec top(Body body) {
    Vec middle = body.box().centre();
    return new Vec(middle.x() + 31, middle.y() + 17, body.box().high().z());
  }

  /** Number, words and tools of the step under the thumb are those of the report's steps. */
  @Test
  void buildStep_isThatOfTheReport_withItsToolsInPlace() throws Exception {
    open("lantern-alley");
    Display.until("it is judged", () -> !find(".busy").isVisible());
    Report report =
        Bench.judge(Bench.design(file.toString(), Files.readString(file))).report().orElseThrow();
    Display.run(
        () -> {
          @SuppressWarnings("unchecked")
          ComboBox<Run> chooser = (ComboBox<Run>) find("#tape-chooser");
          chooser.setValue(chooser.getItems().get(chooser.getItems().size() - 1));
        });
    Tape tape = (Tape) find("#tape");
    int withTools = 0;
    for (BuildStep step : report.plan().steps()) {
      Display.run(() -> tape.valueProperty().set(step.number() - 0.5));
      assertEquals("step " + step.number() + ": " + step.fixing(), tape.getAccessibleText());
      assertTrue(news().startsWith(step.name()), news());
      step.tools().forEach(tool -> assertTrue(news().contains(tool), news()));
      for (String id : step.places()) {
        Body now = floor().floor().body(id).orElseThrow(() -> new AssertionError(id));
        Vec away = now.box().low().minus(box(id).low());
        assertTrue(away.length() > 10, id + " is on its way: " + away);
        boolean straight = step.path().size() == 1;
        assertTrue(!straight || away.dot(step.direction()) < -10, id + " comes along: " + away);
      }
      long bodies =
          report.drivings().stream()
              .filter(d -> d.step() == step.number())
              .mapToLong(d -> d.toolBodies().size())
              .sum();
      assertEquals(bodies, floor().floor().toolCount(), step.name());
      withTools += bodies > 0 ? 1 : 0;
    }
    assertTrue(withTools > 5, withTools + " steps show a tool");
  }

  private Box box(String id) {
    return floor().floor().station().part(id).orElseThrow().body().box();
  }

  @Test
  void memory_keepsTheBriefAndTheWindow() throws Exception {
    Preferences node = Preferences.userRoot().node("sawstead-test-" + folder.getFileName());
    try {
      file = folder.resolve("kept.yaml");
      Files.copy(Demo.file("first-brief"), file);
      Memory memory = Memory.in(node);
      stage = Toolkit.call(() -> Window.stage(file, true, 910, 620, memory));
      Display.until("it is judged", () -> !verdict().startsWith("reading"));
      Display.run(stage::hide);
      assertEquals(file.toAbsolutePath(), memory.lastBrief().orElseThrow());
      assertTrue(memory.dark());
      assertEquals(910, memory.width(0), 1);
    } finally {
      node.removeNode();
    }
  }

  @Test
  void drop_takesTheFirstBrief() {
    assertEquals(
        Path.of("a.YAML"),
        Window.brief(List.of(new File("x.png"), new File("a.YAML"), new File("b.yml")))
            .orElseThrow());
    assertTrue(Window.brief(List.of(new File("x.png"))).isEmpty());
  }

  @Test
  void formList_growsAndShrinks_andTheTextWithIt() throws Exception {
    open("lantern-alley");
    String before = text().getText();
    openCard("saw");
    Display.run(
        () ->
            stage.getScene().getRoot().lookupAll(".button").stream()
                .filter(n -> "add-saw.slots".equals(n.getId()))
                .map(n -> (Button) n)
                .findFirst()
                .orElseThrow()
                .fire());
    Display.until("there is a third slot", () -> text().getText().contains("-5-1/2 in"));
    openCard("saw");
    Display.run(
        () ->
            stage.getScene().getRoot().lookupAll(".button").stream()
                .filter(n -> "remove-saw.slots[2]".equals(n.getId()))
                .map(n -> (Button) n)
                .findFirst()
                .orElseThrow()
                .fire());
    assertEquals(before, text().getText(), "as if nothing had been");
  }

  @Test
  void form_drawsWhatIsMeasured_asTheInterviewDoes() throws Exception {
    open("lantern-alley");
    Display.run(() -> ((ToggleButton) find("#brief")).fire());
    openCard("saw");
    DrawnPicture picture = (DrawnPicture) find("#measured");
    for (String path : List.of("saw.table.width", "saw.slots[1].depth")) {
      Display.run(
          () ->
              stage.getScene().getRoot().lookupAll(".field-row").stream()
                  .filter(n -> ("row-" + path).equals(n.getId()))
                  .findFirst()
                  .orElseThrow()
                  .lookup(".text-field")
                  .requestFocus());
      assertEquals(Drawings.of(path), picture.drawing());
      assertTrue(picture.drawing().orElseThrow().arrow().isPresent(), path);
    }
  }

  private void openCard(String title) {
    Display.run(
        () -> {
          TabPane drawer = (TabPane) find(".brief-drawer");
          drawer.getSelectionModel().select(0);
          drawer.lookupAll(".titled-pane").stream()
              .map(n -> (TitledPane) n)
              .filter(pane -> pane.getText().equals(title))
              .forEach(pane -> pane.setExpanded(true));
          layout();
        });
  }

  @Test
  void darkLook_keepsWhatIsShown() throws Exception {
    open("first-brief");
    var light = floor().floor();
    Display.run(() -> ((Button) find("#dark")).fire());
    Display.until("it is drawn anew", () -> floor().floor() != light);
    assertNotEquals("", verdict());
    assertTrue(stage.getScene().getRoot().getStyleClass().contains("dark"));
  }

  @Test
  void larger_magnifiesAllOfIt_isSharp_pointsRight_andIsRemembered() throws Exception {
    Preferences node = Preferences.userRoot().node("sawstead-test-" + folder.getFileName());
    try {
      file = folder.resolve("large.yaml");
      Files.copy(Demo.file("first-brief"), file);
      Memory memory = Memory.in(node);
      stage = Toolkit.call(() -> Window.stage(file, false, 1200, 760, memory));
      Display.until("it is judged", () -> !verdict().startsWith("reading"));
      double tape = Toolkit.call(() -> ((Tape) find("#tape")).getHeight());
      Display.run(
          () -> {
            ((Button) find("#larger")).fire();
            ((Button) find("#larger")).fire();
            layout();
          });
      Canvas drawn =
          Toolkit.call(
              () ->
                  (Canvas)
                      ((SharpCanvas) ((Tape) find("#tape")).getChildrenUnmodifiable().get(0))
                          .getChildrenUnmodifiable()
                          .get(0));
      // Two steps up is 1.3: the tape is as high as before in its own units, and drawn finer.
      assertEquals(tape, Toolkit.call(() -> ((Tape) find("#tape")).getHeight()), 0.5);
      assertEquals(1.3 * tape, Toolkit.call(drawn::getHeight), 0.5);
      assertEquals(
          1.3 * tape,
          Toolkit.call(() -> find("#tape").localToScene(0, tape).getY())
              - Toolkit.call(() -> find("#tape").localToScene(0, 0).getY()),
          0.5);
      assertEquals(
          1200,
          Toolkit.call(
              () -> find(".desk").localToScene(find(".desk").getLayoutBounds()).getWidth()),
          1);
      Vec middle = box("stand/leg-1-face").centre();
      Display.until("the eye rests", () -> floor().floor() != null);
      Display.run(
          () -> {
            var at =
                floor()
                    .eye()
                    .project(middle, floor().getWidth(), floor().getHeight())
                    .orElseThrow();
            var screen = floor().localToScreen(at.x(), at.y());
            new Robot().mouseMove(screen.getX(), screen.getY());
          });
      Display.until(
          "what is under the pointer is known",
          () -> floor().hovered().orElse("").startsWith("stand/leg-1"));
      Display.run(stage::hide);
      assertEquals(1.3, memory.times(), 1e-9);
    } finally {
      node.removeNode();
    }
  }
}
