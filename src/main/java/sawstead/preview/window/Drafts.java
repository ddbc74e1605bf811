package sawstead.preview.window;

import java.util.Optional;
import java.util.Set;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import javafx.application.Platform;
import sawstead.preview.bench.Bench;
import sawstead.preview.bench.Latest;
import sawstead.preview.bench.Snapshot;
import sawstead.preview.look.Tokens;
import sawstead.preview.scene.Scenery;

/**
 * Designs, makes ready to be drawn, and judges, away from the window's thread. What comes faster
 * than the window can show it is passed over: only the newest waits to be shown.
 */
final class Drafts implements AutoCloseable {
  private static final long QUIET_MILLIS = 250;

  /** A station that can be shown, or the flaws of a text. */
  record Drawn(Snapshot snapshot, Optional<Scenery> scenery) {}

  private final String file;
  private final Consumer<Drawn> drawn;
  private final Consumer<Snapshot> judged;
  private final Latest thread;
  private final AtomicReference<Drawn> waiting = new AtomicReference<>();

  /** Of the bench's thread alone: what was made ready last, from which much can be taken over. */
  private Optional<Scenery> last = Optional.empty();

  private Set<String> turned = Set.of();
  private Snapshot sketched;

  /**
   * All are told on the window's thread.
   *
   * @param file in whose folder unit files are looked for
   * @param drawn is told of what can be shown
   * @param judged is told of the same station with its report
   * @param faulty is told of faults of the program
   */
  Drafts(
      String file,
      Consumer<Drawn> drawn,
      Consumer<Snapshot> judged,
      Consumer<RuntimeException> faulty) {
    this.file = file;
    this.drawn = drawn;
    this.judged = judged;
    thread = new Latest(QUIET_MILLIS, fault -> Platform.runLater(() -> faulty.accept(fault)));
  }

  /** A text that somebody writes: designed and judged as soon as it is quiet. */
  void typed(String text, Tokens look) {
    thread.ask(
        wanted -> {
          Snapshot designed = Bench.design(file, text);
          turned = designed.turned();
          if (wanted.getAsBoolean()) {
            show(designed, look);
            judge(designed, wanted);
          }
        });
  }

  /** What a slider that is still held would make of it: drawn at once, judged when it rests. */
  void dragged(String text, Tokens look) {
    thread.askNow(
        wanted -> {
          sketched = Bench.sketch(file, text, turned);
          // Even what is no longer the newest is worth a look: the next is a while away.
          show(sketched, look);
        },
        wanted -> judge(sketched, wanted));
  }

  private void show(Snapshot snapshot, Tokens look) {
    Optional<Scenery> scenery = snapshot.station().map(s -> Scenery.of(s, look, last));
    last = scenery.or(() -> last);
    if (waiting.getAndSet(new Drawn(snapshot, scenery)) == null) {
      Platform.runLater(() -> drawn.accept(waiting.getAndSet(null)));
    }
  }

  private void judge(Snapshot designed, BooleanSupplier wanted) {
    if (wanted.getAsBoolean()) {
      Snapshot report = Bench.judge(designed);
      if (wanted.getAsBoolean()) {
        Platform.runLater(() -> judged.accept(report));
      }
    }
  }

  @Override
  public void close() {
    thread.close();
  }
}
