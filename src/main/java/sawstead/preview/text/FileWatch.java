package sawstead.preview.text;

import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.Objects;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;

/** Looks at a file now and then, and tells when somebody else has written or removed it. */
public final class FileWatch implements AutoCloseable {
  private static final long EVERY_MILLIS = 600;

  private final Path path;
  private final Runnable changed;
  private final ScheduledExecutorService clock =
      Executors.newSingleThreadScheduledExecutor(
          work -> {
            Thread thread = new Thread(work, "file-watch");
            thread.setDaemon(true);
            return thread;
          });
  private volatile FileTime known;

  /**
   * @param path of the file
   * @param changed is called on a thread of its own
   */
  public FileWatch(Path path, Runnable changed) {
    this.path = path;
    this.changed = changed;
    known = BriefFile.written(path);
    clock.scheduleWithFixedDelay(this::look, EVERY_MILLIS, EVERY_MILLIS, TimeUnit.MILLISECONDS);
  }

  /** What the file is now is no news. */
  public void accept() {
    known = BriefFile.written(path);
  }

  private void look() {
    FileTime now = BriefFile.written(path);
    if (!Objects.equals(now, known)) {
      known = now;
      changed.run();
    }
  }

  @Override
  public void close() {
    clock.shutdownNow();
  }
}
