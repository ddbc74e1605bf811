package sawstead.preview;

import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.function.BooleanSupplier;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Assumptions;

/**
 * A display to test on. Where there is none, tests that need one are left out and say so; with
 * {@code -Dsawstead.toolsRequired=true}, as in {@code .ci/run}, they fail instead.
 */
public final class Display {
  private static final List<Throwable> FAULTS = new CopyOnWriteArrayList<>();

  /** Guards against a hang only: how long a test waits for what must come, seconds. */
  private static final int LIMIT_SECONDS = 120;

  private Display() {}

  /** Starts JavaFX, or leaves the test out. */
  public static void demand() {
    try {
      Toolkit.start();
    } catch (PreviewException e) {
      String message = "window test left out: " + e.getMessage() + ". " + e.remedy();
      if (Boolean.getBoolean("sawstead.toolsRequired")) {
        throw new AssertionError(message);
      }
      Assumptions.abort(message);
    }
    FAULTS.clear();
    Thread.setDefaultUncaughtExceptionHandler((thread, fault) -> FAULTS.add(fault));
    Toolkit.call(
        () -> {
          Thread.currentThread().setUncaughtExceptionHandler((thread, fault) -> FAULTS.add(fault));
          return null;
        });
  }

  /** Fails if anything went wrong on any thread since {@link #demand()}. */
  public static void demandNoFaults() {
    FAULTS.forEach(Throwable::printStackTrace);
    Assertions.assertEquals(List.of(), FAULTS, "no exception on any thread");
  }

  /** Does something on JavaFX's thread. */
  public static void run(Runnable work) {
    Toolkit.call(
        () -> {
          work.run();
          return null;
        });
  }

  /** Waits until something is so, asked on JavaFX's thread. */
  public static void until(String what, BooleanSupplier so) {
    for (int tries = 0; tries < LIMIT_SECONDS * 20; tries++) {
      if (Toolkit.call(so::getAsBoolean)) {
        return;
      }
      try {
        Thread.sleep(50);
      } catch (InterruptedException e) {
        Thread.currentThread().interrupt();
        break;
      }
    }
    demandNoFaults();
    Assertions.fail("waited in vain until " + what);
  }
}
