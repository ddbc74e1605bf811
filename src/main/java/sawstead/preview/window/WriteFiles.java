package sawstead.preview.window;

import java.io.OutputStream;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.atomic.AtomicInteger;
import javafx.application.Platform;
import sawstead.book.BuildBook;
import sawstead.check.Report;
import sawstead.export.ExportException;
import sawstead.export.FileName;
import sawstead.export.build.BuildWriter;
import sawstead.export.stl.StlForm;
import sawstead.layout.Complaint;
import sawstead.layout.CutRequestException;
import sawstead.layout.Effort;
import sawstead.layout.sheet.BreakdownFiles;
import sawstead.layout.shop.Breakdown;
import sawstead.layout.shop.BreakdownText;
import sawstead.station.Station;

/** Writes the files of a build away from the window's thread, and says how far it is. */
final class WriteFiles implements AutoCloseable {
  /** Share of the bar that planning the cuts takes; the files take the rest. */
  private static final double PLANNING = 0.5;

  /** Files besides those of each body: the station, the report, the book, the shop sheet. */
  private static final int OTHERS = 13;

  private final ExecutorService thread =
      Executors.newSingleThreadExecutor(
          work -> {
            Thread made = new Thread(work, "write-files");
            made.setDaemon(true);
            return made;
          });
  private volatile boolean closed;

  /** Writes into {@code exports/<name>} beside the brief, and tells the news. */
  void write(Report report, Path brief, NewsLine news) {
    Path beside = brief.toAbsolutePath().getParent();
    Path folder = beside.resolve("exports").resolve(report.station().brief().slug());
    news.progress(0);
    news.note("planning the cuts ...");
    thread.execute(() -> work(report, folder, news));
  }

  private void work(Report report, Path folder, NewsLine news) {
    try {
      List<Complaint> uncut = new ArrayList<>();
      Optional<Breakdown> plan = plan(report, news, uncut);
      int expected = expected(report.station());
      AtomicInteger opened = new AtomicInteger();
      BuildWriter.write(
          report,
          folder,
          StlForm.BINARY,
          draft -> {
            try (OutputStream out = draft.open(FileName.parse(BuildBook.FILE))) {
              BuildBook.write(report, out);
            }
            if (plan.isPresent()) {
              BreakdownFiles.write(
                  plan.get(), name -> draft.open(FileName.parse("breakdown/" + name)));
            }
          },
          name -> {
            double share = Math.min(1, (double) opened.incrementAndGet() / expected);
            tell(news, PLANNING + (1 - PLANNING) * share, "writing " + name);
          });
      String where = BreakdownText.count(opened.get(), "file", "files") + " in " + folder;
      String words =
          report.forbidsCutting() || !uncut.isEmpty()
              ? "written to look at, not to cut from: " + where
              : "written: " + where;
      String why =
          uncut.stream()
              .findFirst()
              .map(c -> "; no cut plan: " + c.what() + "; " + c.remedy())
              .orElse("");
      done(news, () -> news.written(words + why, folder));
    } catch (ExportException e) {
      done(news, () -> news.mind(e.what() + ": " + e.where() + "; " + e.remedy()));
    } catch (RuntimeException e) {
      done(news, () -> news.mind("nothing was written: a fault of the program"));
    }
  }

  /** The cut plan; none when the panels cannot come from the sheets, which is told at the end. */
  private Optional<Breakdown> plan(Report report, NewsLine news, List<Complaint> uncut) {
    if (report.station().boards().isEmpty()) {
      return Optional.empty();
    }
    try {
      return Optional.of(
          Breakdown.of(
              report,
              Effort.USUAL,
              (share, counted, bound) -> {
                tell(
                    news,
                    PLANNING * share,
                    "planning the cuts: "
                        + BreakdownText.count(counted, "sheet", "sheets")
                        + " so far");
                return !closed;
              }));
    } catch (CutRequestException e) {
      uncut.addAll(e.complaints());
      return Optional.empty();
    }
  }

  private static int expected(Station station) {
    return station.parts().size() + station.boards().size() + OTHERS;
  }

  private static void tell(NewsLine news, double share, String words) {
    Platform.runLater(
        () -> {
          news.progress(share);
          news.note(words);
        });
  }

  private static void done(NewsLine news, Runnable tell) {
    Platform.runLater(
        () -> {
          news.progress(-1);
          tell.run();
        });
  }

  @Override
  public void close() {
    // What is being written is finished; a half-written folder is nobody's wish.
    closed = true;
    thread.shutdown();
  }
}
