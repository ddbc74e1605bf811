package sawstead.cli;

import java.io.PrintWriter;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;

/**
 * Says what takes so long, once something takes longer than {@link #PATIENCE_MILLIS}. Silent when
 * nobody looks on, and silent after it is closed.
 */
final class Progress implements AutoCloseable {
  /** How long a person waits without wondering, milliseconds. */
  static final long PATIENCE_MILLIS = 1000;

  private final PrintWriter out;
  private final ScheduledExecutorService clock;
  private final long patience;
  private String stage = "";
  private boolean closed;

  private Progress(PrintWriter out, ScheduledExecutorService clock, long patience) {
    this.out = out;
    this.clock = clock;
    this.patience = patience;
  }

  /** Progress on the error output, if a person looks on. */
  static Progress on(Streams streams) {
    return on(streams.errText(), streams.terminal(), PATIENCE_MILLIS);
  }

  static Progress on(PrintWriter out, boolean seen, long patience) {
    ScheduledExecutorService clock = null;
    if (seen) {
      clock =
          Executors.newSingleThreadScheduledExecutor(
              work -> {
                Thread thread = new Thread(work, "progress");
                thread.setDaemon(true);
                return thread;
              });
    }
    return new Progress(out, clock, patience);
  }

  /** A stage begins; it is named if it takes long. */
  synchronized void begin(String name) {
    stage = name;
    if (clock != null && !closed) {
      clock.schedule(() -> tell(name), patience, TimeUnit.MILLISECONDS);
    }
  }

  private synchronized void tell(String name) {
    if (!closed && stage.equals(name)) {
      out.println(name + " ...");
      out.flush();
    }
  }

  @Override
  public synchronized void close() {
    closed = true;
    if (clock != null) {
      clock.shutdownNow();
    }
  }
}
