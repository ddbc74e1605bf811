package sawstead.preview.window;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TextArea;
import javafx.scene.control.ToggleButton;
import javafx.scene.robot.Robot;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import sawstead.check.Words;
import sawstead.intake.BriefSchema;
import sawstead.intake.BriefSpans;
import sawstead.measure.Unit;
import sawstead.preview.Display;
import sawstead.preview.Toolkit;
import sawstead.preview.caliper.Spot;
import sawstead.preview.scene.Demo;
import sawstead.preview.tape.Tape;
import sawstead.preview.view.FloorView;
import sawstead.solid.Body;
import sawstead.solid.Vec;

/** What the caliper says while what it measured becomes another. */
class MeasuringTest extends BriefTextTestBase {
  private double apart;

  @BeforeEach
  void measured() throws Exception {
    Path file = Demo.copy("chandler-row", folder);
    stage = Toolkit.call(() -> Window.stage(file, false, 1200, 760));
    quiet();
    Display.run(
        () -> {
          ((ToggleButton) find("#measure")).fire();
          Body base = floor().floor().body("stand/base").orElseThrow();
          Body top = floor().floor().body("stand/top").orElseThrow();
          floor().pointAt(Spot.at(base, top(base), 1));
          floor().pointAt(Spot.at(top, top(top), 1));
          apart = top.box().high().z() - base.box().high().z();
        });
    assertEquals(reading(Unit.MM), said());
  }

  private FloorView floor() {
    return (FloorView) find(".room");
  }

  private void quiet() {
    Display.until("it is judged", () -> find(".hang-tag") != null && !find(".busy").isVisible());
  }

  private String said() {
    return Toolkit.call(() -> floor().measured());
  }

  private String reading(Unit unit) {
    return new Words(unit).length(apart) + " face to face";
  }

  private static Vec top(Body body) {
    Vec middle = body.box().centre();
    return new Vec(middle.x() + 31, middle.y() + 17, body.box().high().z());
  }

  private void change(String was, String is) {
    TextArea area = text();
    String changed = area.getText().replaceAll(was, is);
    assertEquals(false, changed.equals(area.getText()), "something is changed");
    Display.run(() -> area.setText(changed));
    quiet();
  }

  @Test
  void anotherHeight_isNotSaidToBeTheOneBefore() {
    change("workingHeight: [0-9.]+", "workingHeight: 871");
    assertEquals("", said());
  }

  @Test
  void anotherWordInTheBrief_orTheDarkLook_orAMotionElsewhere_leavesIt() {
    change("(?m)^name: .*", "name: another");
    assertEquals(reading(Unit.MM), said());
    Display.run(() -> ((Button) find("#dark")).fire());
    quiet();
    assertEquals(reading(Unit.MM), said());
    Display.run(() -> ((Tape) find("#tape")).valueProperty().set(40));
    assertEquals(reading(Unit.MM), said());
  }

  @Test
  void otherUnits_areWhatItIsSaidIn() {
    TextArea area = text();
    String inches = inInches(area.getText());
    Display.run(
        () -> {
          var box = floor().floor().body("stand/top").orElseThrow().box();
          var at = floor().eye().project(box.centre(), floor().getWidth(), floor().getHeight());
          var screen = floor().localToScreen(at.orElseThrow().x(), at.orElseThrow().y());
          new Robot().mouseMove(screen.getX(), screen.getY());
        });
    Display.until("the pointer is on a body", () -> hovering().contains(" mm"));
    Display.run(() -> area.setText(inches));
    quiet();
    assertEquals(Unit.INCH, Toolkit.call(() -> floor().floor().station().brief().units()));
    assertEquals(reading(Unit.INCH), said());
    assertEquals(false, Toolkit.call(() -> hovering().contains(" mm")), hovering());
  }

  private String hovering() {
    return stage.getScene().getRoot().lookupAll(".hover-label").stream()
        .filter(n -> n.isVisible() && !n.getStyleClass().contains("caliper-label"))
        .map(n -> ((Label) n).getText())
        .findFirst()
        .orElse("");
  }

  /** The same lengths and masses, each with the unit that went without saying. */
  private static String inInches(String text) {
    StringBuilder inches = new StringBuilder(text);
    List<Map.Entry<String, BriefSpans.Span>> spans =
        new ArrayList<>(BriefSpans.of(text).entrySet());
    spans.sort(Comparator.comparing(e -> -e.getValue().from()));
    for (Map.Entry<String, BriefSpans.Span> entry : spans) {
      String unit = BriefSchema.at(entry.getKey()).path("x-unit").asText();
      String value = entry.getValue().value().orElse("");
      if (Set.of("mm", "kg").contains(unit) && value.matches("-?[0-9.]+( *\u00b1.*)?")) {
        int end = entry.getValue().from() + value.replaceAll("(?s)^(-?[0-9.]+).*", "$1").length();
        inches.insert(end, " " + unit);
      }
    }
    return inches.toString().replaceFirst("(?m)^units: mm", "units: inch");
  }

  @Test
  void takenApart_isNotSaidToStand() {
    Display.run(() -> floor().arrange(floor().floor().arrangement().spread(0.5)));
    assertEquals("", said());
    Display.run(
        () -> {
          Body base = floor().floor().body("stand/base").orElseThrow();
          floor().pointAt(Spot.at(base, top(base), 1));
        });
    assertEquals("from here: click the other face or edge", said());
    Display.run(() -> floor().arrange(floor().floor().arrangement().spread(0)));
    assertEquals("", said(), "the first place is another, too");
  }
}
