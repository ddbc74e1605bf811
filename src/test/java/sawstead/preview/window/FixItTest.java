package sawstead.preview.window;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.Slider;
import javafx.scene.control.TextField;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sawstead.preview.Display;
import sawstead.preview.StageTestBase;
import sawstead.preview.Toolkit;
import sawstead.preview.tags.TagColumn;

/**
 * Somebody who has never seen the program finds why a flawed model fails, puts it right with a
 * slider, and writes the files: a click on the worst tag's button, a pull, two buttons.
 */
class FixItTest extends StageTestBase {

  private String text(String label) {
    return ((Label) find(label)).getText();
  }

  private Node row(String path) {
    layout();
    return stage.getScene().getRoot().lookupAll(".field-row").stream()
        .filter(n -> ("row-" + path).equals(n.getId()))
        .findFirst()
        .orElse(null);
  }

  @ParameterizedTest
  @CsvSource({
    "shelf-over-lid, extras[0].place.at[2], 1010, 1350",
    "big-router, station.wings.right.width, 320, 400",
    "narrow-stand, station.stand.width, 575, 640",
    "small-port, station.ports[0].diameter, 25, 80",
    "leaf-meets-wall, room.rear, 1012.5, 1300",
    "near-hand, sleds[0].hands, 110, 160",
    "weak-casters, casters.rating, 15, 28",
    "tight-drawer, drawers[0].width, 375, 350",
  })
  void flawedModel_isFoundOutPutRightAndWritten(
      String model, String path, String was, String wanted) throws Exception {
    Path file = folder.resolve(model + ".yaml");
    Files.copy(Path.of("models/flawed", model + ".yaml"), file);
    String before = Files.readString(file);
    stage = Toolkit.call(() -> Window.stage(file, false, 1200, 760));
    Display.until("it says not to cut", () -> text("#verdict").startsWith("do not cut"));
    assertTrue(Toolkit.call(() -> ((TagColumn) find(".tag-column")).change(0)));
    Display.until("the value bears on it: " + path, () -> row(path) != null);
    double millimetres = Double.parseDouble(wanted);
    Display.until(
        "its slider reaches " + wanted,
        () -> {
          pull(path, millimetres);
          return typed(path).equals(wanted);
        });
    Display.until("it may be cut", () -> !text("#verdict").startsWith("do not cut"));
    Display.run(() -> ((Button) find("#save")).fire());
    String after = Files.readString(file);
    int at = 0;
    while (before.charAt(at) == after.charAt(at)) {
      at++;
    }
    int end = 0;
    while (before.charAt(before.length() - 1 - end) == after.charAt(after.length() - 1 - end)) {
      end++;
    }
    assertTrue(before.length() - end - at <= was.length(), "only the value differs");
    assertTrue(after.length() - end - at <= wanted.length(), "only the value differs");
    Display.run(() -> ((Button) find("#write-files")).fire());
    Display.until("the files are written", () -> text("#news").startsWith("written"));
    assertTrue(Files.exists(folder.resolve("exports")), "beside the brief");
    try (var written = Files.walk(folder.resolve("exports"))) {
      assertEquals(1, written.filter(p -> p.endsWith("report.json")).count());
    }
    assertTrue(find("#open-folder") != null, "and can be opened");
  }

  /** As a hand does: takes hold, pulls, lets go; the slider's range follows, so perhaps twice. */
  private void pull(String path, double millimetres) {
    Slider slider = (Slider) row(path).lookup(".field-slider");
    slider.setValueChanging(true);
    slider.setValue(millimetres);
    slider.setValueChanging(false);
  }

  private String typed(String path) {
    return ((TextField) row(path).lookup(".text-field")).getText();
  }
}
