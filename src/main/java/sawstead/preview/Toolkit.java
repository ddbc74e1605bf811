package sawstead.preview;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.concurrent.Callable;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.logging.LogManager;
import javafx.application.ConditionalFeature;
import javafx.application.Platform;
import sawstead.preview.look.Faces;

/** Starts JavaFX once, or says plainly why it cannot be started. */
public final class Toolkit {
  private static final int PATIENCE_SECONDS = 30;
  private static boolean running;

  private Toolkit() {}

  /**
   * Makes sure that JavaFX runs and can draw in three dimensions.
   *
   * @throws PreviewException if this machine has no display or no 3D
   */
  public static synchronized void start() {
    if (running) {
      return;
    }
    if (isLinux() && System.getenv("DISPLAY") == null) {
      throw noDisplay();
    }
    // Without this JavaFX refuses 3D on drivers that it does not know, software ones among them.
    if (System.getProperty("prism.forceGPU") == null) {
      System.setProperty("prism.forceGPU", "true");
    }
    hush();
    CountDownLatch started = new CountDownLatch(1);
    try {
      Platform.startup(started::countDown);
      if (!started.await(PATIENCE_SECONDS, TimeUnit.SECONDS)) {
        throw noDisplay();
      }
    } catch (IllegalStateException alreadyRunning) {
      // Somebody else in this process, such as a test, has started it.
    } catch (UnsupportedOperationException e) {
      throw noDisplay();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw noDisplay();
    }
    Platform.setImplicitExit(false);
    if (!Platform.isSupported(ConditionalFeature.SCENE3D)) {
      throw new PreviewException(
          "this machine cannot draw in three dimensions",
          "the graphics driver",
          "use check and build, which need no graphics; or update the driver, or start with"
              + " -Dprism.order=es2 (Linux, macOS) or d3d (Windows)");
    }
    Faces.load();
    running = true;
  }

  /** Does something on JavaFX's thread and waits for it. */
  public static <T> T call(Callable<T> work) {
    if (Platform.isFxApplicationThread()) {
      try {
        return work.call();
      } catch (Exception e) {
        throw new IllegalStateException(e);
      }
    }
    CompletableFuture<T> result = new CompletableFuture<>();
    Platform.runLater(
        () -> {
          try {
            result.complete(work.call());
          } catch (Throwable e) {
            result.completeExceptionally(e);
          }
        });
    try {
      return result.get(120, TimeUnit.SECONDS);
    } catch (ExecutionException e) {
      throw e.getCause() instanceof RuntimeException r ? r : new IllegalStateException(e);
    } catch (TimeoutException e) {
      throw new IllegalStateException("the window's thread does not answer", e);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("interrupted", e);
    }
  }

  private static boolean isLinux() {
    return System.getProperty("os.name", "").toLowerCase(Locale.ROOT).contains("linux");
  }

  private static PreviewException noDisplay() {
    return new PreviewException(
        "there is no display to draw on",
        "this machine (DISPLAY is not set, or nobody answers there)",
        "run it on a desktop, or under xvfb-run; check and build need no display");
  }

  /**
   * JavaFX warns that it is not a named module; in one jar it never is, and no user can help it.
   */
  private static void hush() {
    try {
      LogManager.getLogManager()
          .updateConfiguration(
              new ByteArrayInputStream("javafx.level=OFF\n".getBytes(StandardCharsets.UTF_8)),
              key -> (before, after) -> after == null ? before : after);
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }
}
