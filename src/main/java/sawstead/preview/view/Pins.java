package sawstead.preview.view;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import javafx.scene.Group;
import javafx.scene.control.Tooltip;
import javafx.scene.shape.Line;
import sawstead.check.Finding;
import sawstead.check.Severity;
import sawstead.preview.look.Signs;
import sawstead.preview.scene.Eye;
import sawstead.solid.Vec;

/** The signs of findings, each on a string at its place in the scene. */
final class Pins extends Group {
  private static final double STRING = 34;

  private record Pin(Vec at, Group node) {}

  private final List<Pin> pins = new ArrayList<>();

  void hang(List<Finding> findings, Consumer<Finding> chosen) {
    pins.clear();
    for (Finding finding : findings) {
      if (finding.severity() != Severity.NOTE && finding.at().isPresent()) {
        pins.add(new Pin(finding.at().get(), pin(finding, chosen)));
      }
    }
    getChildren().setAll(pins.stream().map(Pin::node).toList());
  }

  private static Group pin(Finding finding, Consumer<Finding> chosen) {
    Line string = new Line(0, 0, 0, -STRING);
    string.getStyleClass().add("pin-string");
    Group sign = Signs.of(finding.severity(), 24);
    sign.setLayoutX(-12);
    sign.setLayoutY(-STRING - 22);
    Group pin = new Group(string, sign);
    Tooltip.install(pin, new Tooltip(finding.says()));
    pin.setOnMouseClicked(
        e -> {
          chosen.accept(finding);
          e.consume();
        });
    return pin;
  }

  void place(Eye eye, double width, double height) {
    for (Pin pin : pins) {
      var spot = eye.project(pin.at(), width, height);
      pin.node().setVisible(spot.isPresent() && inside(spot.get(), width, height));
      spot.ifPresent(s -> pin.node().relocate(s.x() - 12, s.y() - STRING - 22));
    }
  }

  private static boolean inside(Eye.Spot spot, double width, double height) {
    return spot.x() > 14 && spot.x() < width - 14 && spot.y() > 40 && spot.y() < height;
  }
}
