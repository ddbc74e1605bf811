package sawstead.preview.window;

import java.nio.file.Path;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import javafx.application.Platform;
import sawstead.check.Report;
import sawstead.export.ExportException;
import sawstead.export.build.BuildWriter;
import sawstead.export.stl.StlForm;

/** Writes the files of a build away from the window's thread. */
final class WriteFiles implements AutoCloseable {
  private final ExecutorService thread =
      Executors.newSingleThreadExecutor(
          work -> {
            Thread made = new Thread(work, "write-files");
            made.setDaemon(true);
            return made;
          });

  /** Writes into {@code exports/<name>} of the folder one is in, and tells the news. */
  void write(Report report, Path brief, NewsLine news) {
    Path folder = Path.of("exports", report.station().brief().slug());
    news.busy(true);
    news.note("writing " + folder + " ...");
    thread.execute(
        () -> {
          try {
            BuildWriter.write(report, folder, StlForm.BINARY);
            String words =
                report.forbidsCutting() ? "written to look at, not to cut from: " : "written: ";
            done(news, () -> news.note(words + folder.toAbsolutePath()));
          } catch (ExportException e) {
            done(news, () -> news.mind(e.what() + ": " + e.where() + "; " + e.remedy()));
          } catch (RuntimeException e) {
            done(news, () -> news.mind("nothing was written: a fault of the program"));
          }
        });
  }

  private static void done(NewsLine news, Runnable tell) {
    Platform.runLater(
        () -> {
          news.busy(false);
          tell.run();
        });
  }

  @Override
  public void close() {
    // What is being written is finished; a half-written folder is nobody's wish.
    thread.shutdown();
  }
}
