package sawstead.layout.sheet;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import org.apache.pdfbox.pdmodel.PDDocument;
import sawstead.layout.shop.Breakdown;

/**
 * Two documents as PDF: the shop sheet, the whole job on one page; and the sheet book, first every
 * setting of the table saw, then a page for each sheet with a large drawing. The same breakdown
 * gives the same bytes. Streams are flushed, not closed.
 */
final class ShopSheetWriter {
  private ShopSheetWriter() {}

  /** Content of one document. */
  @FunctionalInterface
  private interface Content {
    void draw(PDDocument document) throws IOException;
  }

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
          ShopSheet book = new ShopSheet(document, breakdown);
          new JobPage(book, breakdown).draw();
          SheetPage page = new SheetPage(book, breakdown);
          for (int number = 1; number <= breakdown.plan().sheets().size(); number++) {
            page.draw(number);
          }
        });
  }

  private static void write(Breakdown breakdown, OutputStream out, Content content)
      throws IOException {
    try (PDDocument document = new PDDocument()) {
      // A fixed id instead of the time of day.
      document.setDocumentId(1L);
      document.getDocumentInformation().setTitle("Cut: " + breakdown.station().brief().name());
      content.draw(document);
      ByteArrayOutputStream bytes = new ByteArrayOutputStream();
      document.save(bytes);
      bytes.writeTo(out);
      out.flush();
    }
  }
}
