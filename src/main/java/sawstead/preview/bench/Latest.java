package sawstead.preview.bench;

import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;

/**
 * A thread of its own that only ever answers the newest question: those asked while it is quiet for
 * less than a moment, or while it still works on an older one, are passed over.
 */
public final class Latest implements AutoCloseable {
  private final long quietMillis;
  private final Consumer<RuntimeException> faulty;
  private final AtomicLong newest = new AtomicLong();
  private final ScheduledExecutorService thread =
      Executors.newSingleThreadScheduledExecutor(
          work -> {
            Thread made = new Thread(work, "bench");
            made.setDaemon(true);
            return made;
          });

  /**
   * @param quietMillis how long nothing new must be asked before work begins
   * @param faulty is told on this thread what work throws; an executor would swallow it, and the
   *     user would wait for ever
   */
  public Latest(long quietMillis, Consumer<RuntimeException> faulty) {
    this.quietMillis = quietMillis;
    this.faulty = faulty;
  }

  /**
   * Asks for work.
   *
   * @param work is told by its argument whether it is still the newest; it had better look between
   *     steps
   */
  public void ask(Consumer<BooleanSupplier> work) {
    begin(ticket(), work, quietMillis);
  }

  /**
   * For what changes all the time, as while something is dragged: as soon as the thread is free,
   * the newest is begun.
   *
   * @param first is not kept waiting until it is quiet
   * @param whenQuiet is done after it, unless something newer was asked within the moment
   */
  public void askNow(Consumer<BooleanSupplier> first, Consumer<BooleanSupplier> whenQuiet) {
    BooleanSupplier wanted = ticket();
    begin(wanted, first, 0);
    begin(wanted, whenQuiet, quietMillis);
  }

  private BooleanSupplier ticket() {
    long ticket = newest.incrementAndGet();
    return () -> newest.get() == ticket;
  }

  private void begin(BooleanSupplier wanted, Consumer<BooleanSupplier> work, long after) {
    if (thread.isShutdown()) {
      return; // Nobody waits for the answer any more.
    }
    thread.schedule(
        () -> {
          try {
            if (wanted.getAsBoolean()) {
              work.accept(wanted);
            }
          } catch (RuntimeException fault) {
            faulty.accept(fault);
          }
        },
        after,
        TimeUnit.MILLISECONDS);
  }

  @Override
  public void close() {
    newest.incrementAndGet();
    thread.shutdownNow();
  }
}
