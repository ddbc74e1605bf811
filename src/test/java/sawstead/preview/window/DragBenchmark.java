package sawstead.preview.window;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadInfo;
import java.lang.management.ThreadMXBean;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import javafx.animation.AnimationTimer;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.Slider;
import javafx.scene.control.TabPane;
import javafx.scene.control.TitledPane;
import javafx.scene.control.ToggleButton;
import javafx.stage.Stage;
import sawstead.preview.Display;
import sawstead.preview.Toolkit;
import sawstead.preview.view.FloorView;
import sawstead.station.Station;

/**
 * How long the window's thread is held up while a dimension is dragged. No test, since it has a
 * clock, and not JMH, since what is measured are the pulses of JavaFX. Prints the time between two
 * frames (median, 95th of a hundred, longest), and between two stations that are drawn; then the
 * time that each thread has computed, which says the same on a machine that has other work, too.
 *
 * <p>Run: {@code mvn -q test-compile dependency:build-classpath -Dmdep.outputFile=cp.txt}, then
 * {@code xvfb-run -a -s "-screen 0 1600x1000x24" java -Dprism.forceGPU=true -cp
 * target/test-classes:target/classes:$(cat cp.txt) sawstead.preview.window.DragBenchmark
 * models/lantern-alley.yaml station.workingHeight}.
 */
public final class DragBenchmark {
  private static final int PULLS = 120;
  private static final List<String> THREADS =
      List.of("bench", "JavaFX Application Thread", "QuantumRenderer-0");
  private static final int EVERY_MILLIS = 40;

  private final List<Long> frames = new ArrayList<>();
  private final List<Long> redraws = new ArrayList<>();
  private Stage stage;
  private long lastDrawn;
  private Station shown;

  private DragBenchmark() {}

  /** Arguments: a brief, and the path of a length in it. */
  public static void main(String[] args) throws Exception {
    Display.demand();
    new DragBenchmark().run(Path.of(args[0]), args[1]);
    System.exit(0);
  }

  private void run(Path brief, String path) throws Exception {
    Path copy = Files.createTempDirectory("drag").resolve(brief.getFileName());
    Files.copy(brief, copy);
    stage = Toolkit.call(() -> Window.stage(copy, false, 1280, 800));
    Display.until("it is judged", () -> !label("#verdict").startsWith("reading"));
    Display.run(this::openEverything);
    Slider slider = Toolkit.call(() -> (Slider) row(path).lookup(".field-slider"));
    AnimationTimer clock = clock();
    Display.run(clock::start);
    double from = slider.getMin();
    double span = slider.getMax() - from;
    Map<String, Long> before = computed();
    Display.run(() -> slider.setValueChanging(true));
    for (int k = 0; k < PULLS; k++) {
      double at = from + span * (0.4 + 0.2 * Math.sin(k * 0.15));
      Display.run(() -> slider.setValue(at));
      Thread.sleep(EVERY_MILLIS);
    }
    Display.run(clock::stop);
    Map<String, Long> after = computed();
    Display.run(() -> slider.setValueChanging(false));
    Display.until("it is judged again", () -> !find(".busy").isVisible());
    Display.run(stage::hide);
    print("frame to frame", frames);
    print("redraw to redraw", redraws);
    System.out.printf(Locale.ROOT, "%d pulls, %d redraws%n", PULLS, redraws.size() + 1);
    after.forEach(
        (thread, nanos) ->
            System.out.printf(
                Locale.ROOT,
                "computed by %s: %.1f ms a redraw%n",
                thread,
                (nanos - before.getOrDefault(thread, 0L)) / 1e6 / (redraws.size() + 1)));
  }

  /** Of each thread that draws or designs, ns. */
  private static Map<String, Long> computed() {
    ThreadMXBean bean = ManagementFactory.getThreadMXBean();
    Map<String, Long> nanos = new TreeMap<>();
    for (long id : bean.getAllThreadIds()) {
      ThreadInfo info = bean.getThreadInfo(id);
      if (info != null && THREADS.contains(info.getThreadName())) {
        nanos.merge(info.getThreadName(), bean.getThreadCpuTime(id), Long::sum);
      }
    }
    return nanos;
  }

  private AnimationTimer clock() {
    return new AnimationTimer() {
      private long before;

      @Override
      public void handle(long now) {
        long real = System.nanoTime();
        if (before > 0) {
          frames.add(real - before);
        }
        before = real;
        Station floor = ((FloorView) find(".room")).floor().station();
        if (floor != shown) {
          if (lastDrawn > 0) {
            redraws.add(real - lastDrawn);
          }
          lastDrawn = real;
          shown = floor;
        }
      }
    };
  }

  private void openEverything() {
    ((ToggleButton) find("#brief")).fire();
    TabPane drawer = (TabPane) find(".brief-drawer");
    drawer.getSelectionModel().select(0);
    layout();
    drawer.lookupAll(".titled-pane").forEach(n -> ((TitledPane) n).setExpanded(true));
    layout();
  }

  private void layout() {
    stage.getScene().getRoot().applyCss();
    stage.getScene().getRoot().layout();
  }

  private Node find(String selector) {
    return stage.getScene().lookup(selector);
  }

  private String label(String selector) {
    return ((Label) find(selector)).getText();
  }

  private Node row(String path) {
    return stage.getScene().getRoot().lookupAll(".field-row").stream()
        .filter(n -> ("row-" + path).equals(n.getId()))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("the form has no length " + path));
  }

  private static void print(String what, List<Long> nanos) {
    List<Long> sorted = new ArrayList<>(nanos);
    Collections.sort(sorted);
    if (sorted.isEmpty()) {
      System.out.println(what + ": never");
      return;
    }
    System.out.printf(
        Locale.ROOT,
        "%s: median %.1f ms, 95 of 100 below %.1f ms, longest %.1f ms%n",
        what,
        sorted.get(sorted.size() / 2) / 1e6,
        sorted.get((int) (sorted.size() * 0.95)) / 1e6,
        sorted.get(sorted.size() - 1) / 1e6);
  }
}
