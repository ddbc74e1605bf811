package sawstead.book;

import java.io.IOException;
import java.io.OutputStream;
import sawstead.check.Report;
import sawstead.drawing.page.Booklet;
import sawstead.drawing.page.PdfFile;
import sawstead.station.Station;

/** Writes the build book. */
public final class BuildBook {
  /** The name of its file in the folder of a build. */
  public static final String FILE = "build-book.pdf";

  private BuildBook() {}

  /**
   * Writes the book of a station as PDF; the same report gives the same bytes. The stream is
   * flushed, not closed.
   *
   * @throws IOException if it cannot be written
   */
  public static void write(Report report, OutputStream out) throws IOException {
    Station station = report.station();
    String name = station.brief().name();
    PdfFile.write(
        "Build: " + name,
        out,
        document -> {
          Booklet book = new Booklet(document, station.brief().units(), name);
          new CoverPage(book, report).draw();
          new StepPages(book, report).draw(report.plan().steps());
          new PanelPages(book, station).draw();
        });
  }
}
