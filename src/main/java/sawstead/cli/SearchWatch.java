package sawstead.cli;

import java.io.PrintWriter;
import java.util.Locale;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import sawstead.layout.packing.Watch;
import sawstead.layout.shop.BreakdownText;

/**
 * Shows how far a search is, when somebody is looking, and turns the interrupt key into an early
 * end: the best plan so far is still printed.
 */
final class SearchWatch implements Watch, AutoCloseable {
  /** The first line appears when a search takes longer than this. */
  private static final long PATIENCE = TimeUnit.SECONDS.toNanos(1);

  private final PrintWriter line;
  private final Thread onInterrupt = new Thread(this::stop, "stop-search");
  private final CountDownLatch finished = new CountDownLatch(1);
  private final long begun = System.nanoTime();
  private int shown = -1;
  private volatile boolean stopped;

  /**
   * Begins to watch.
   *
   * @param line where progress is written, or null for nowhere
   */
  SearchWatch(PrintWriter line) {
    this.line = line;
    Runtime.getRuntime().addShutdownHook(onInterrupt);
  }

  private void stop() {
    stopped = true;
    try {
      // The machine halts when this returns; the plan has to be printed before.
      finished.await(10, TimeUnit.SECONDS);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  @Override
  public boolean goOn(double done, int counted, int bound) {
    int percent = (int) (100 * done);
    if (line != null && percent != shown && System.nanoTime() - begun > PATIENCE) {
      shown = percent;
      line.print(
          String.format(
              Locale.ROOT,
              "\r%3d %%, %s, at least %d ",
              percent,
              BreakdownText.count(counted, "sheet", "sheets"),
              bound));
      line.flush();
    }
    return !stopped;
  }

  @Override
  public void close() {
    if (shown >= 0) {
      line.print("\r" + " ".repeat(40) + "\r");
      line.flush();
    }
    finished.countDown();
    try {
      Runtime.getRuntime().removeShutdownHook(onInterrupt);
    } catch (IllegalStateException e) {
      // already shutting down: the hook is what brought us here
    }
  }
}
