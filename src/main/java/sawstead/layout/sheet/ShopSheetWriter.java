package sawstead.layout.sheet;

import java.io.IOException;
import java.io.OutputStream;
import sawstead.drawing.page.Booklet;
import sawstead.drawing.page.PdfFile;
import sawstead.layout.shop.Breakdown;

/**
 * Two documents as PDF: the shop sheet, the whole job on one page; and the sheet book, first every
 * setting of the table saw, then a page for each sheet with a large drawing. The same breakdown
 * gives the same bytes. Streams are flushed, not closed.
 */
final class ShopSheetWriter {
  private ShopSheetWriter() {}

  /** The shop sheet. */
  static void sheet(Breakdown breakdown, OutputStream out) throws IOException {
    write(breakdown, out, document -> OnePage.draw(document, breakdown));
  }

  /** The sheet book. */
  static void book(Breakdown breakdown, OutputStream out) throws IOException {
    write(
        breakdown,
        out,
        document -> {
          Booklet book =
              new Booklet(
                  document,
                  breakdown.station().brief().units(),
                  breakdown.station().brief().name());
          new JobPage(book, breakdown).draw();
          SheetPage page = new SheetPage(book, breakdown);
          for (int number = 1; number <= breakdown.plan().sheets().size(); number++) {
            page.draw(number);
          }
        });
  }

  private static void write(Breakdown breakdown, OutputStream out, PdfFile.Content content)
      throws IOException {
    PdfFile.write("Cut: " + breakdown.station().brief().name(), out, content);
  }
}
