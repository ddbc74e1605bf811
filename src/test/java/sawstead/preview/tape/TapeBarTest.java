package sawstead.preview.tape;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import sawstead.preview.Display;
import sawstead.preview.Toolkit;
import sawstead.preview.scene.BuildOrder;
import sawstead.preview.scene.Demo;
import sawstead.station.Station;

/** The tape while the station under it becomes another one. */
class TapeBarTest {
  private final List<TapeBar.Reading> readings = new ArrayList<>();
  private TapeBar bar;

  @BeforeEach
  void made() {
    Display.demand();
    bar = Toolkit.call(() -> new TapeBar(readings::add));
  }

  private void offer(String demo) {
    Station station = Demo.station(demo);
    Display.run(() -> bar.offer(station, BuildOrder.of(station), Optional.empty()));
  }

  @SuppressWarnings("unchecked")
  private ComboBox<Run> chooser() {
    return (ComboBox<Run>) bar.getChildren().get(0);
  }

  private void choose(String name) {
    Display.run(
        () ->
            chooser()
                .setValue(
                    chooser().getItems().stream()
                        .filter(r -> r.name().equals(name))
                        .findFirst()
                        .orElseThrow()));
  }

  private String play() {
    return Toolkit.call(() -> ((Button) bar.getChildren().get(1)).getText());
  }

  @Test
  void offer_ofAShorterRun_pullsTheThumbNoFurtherThanItReaches() {
    String build = "the build, step by step";
    offer("lantern-alley");
    choose(build);
    int steps = Demo.station("first-brief").steps().size();
    assertTrue(Demo.station("lantern-alley").steps().size() > steps);
    offer("first-brief");
    Display.run(
        () -> {
          assertEquals(build, bar.run().orElseThrow().name());
          assertEquals(steps, bar.tape().valueProperty().get());
          assertEquals(steps, readings.get(readings.size() - 1).at());
        });
  }

  @Test
  void offer_withoutWhatPlays_stopsIt() {
    offer("lantern-alley");
    List<String> others = Demo.station("first-brief").movers().stream().map(m -> m.id()).toList();
    String gone =
        Toolkit.call(
            () ->
                chooser().getItems().stream()
                    .filter(r -> r.mover().map(m -> !others.contains(m.id())).orElse(false))
                    .findFirst()
                    .orElseThrow()
                    .name());
    choose(gone);
    Display.run(bar::playOrStop);
    assertTrue(play().contains("stop"), play());
    offer("first-brief");
    assertTrue(play().contains("play"), play());
  }
}
