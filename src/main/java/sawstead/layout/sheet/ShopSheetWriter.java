package sawstead.layout.sheet;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import org.apache.pdfbox.pdmodel.PDDocument;
import sawstead.layout.shop.Breakdown;

/**
 * The shop sheet as PDF: first the job with the settings of the table saw in order, then one page a
 * sheet. A sheet with more cuts than a page holds goes on on the next. The same breakdown gives the
 * same bytes. The stream is flushed, not closed.
 */
final class ShopSheetWriter {
  private ShopSheetWriter() {}

  static void write(Breakdown breakdown, OutputStream out) throws IOException {
    try (PDDocument document = new PDDocument()) {
      // A fixed id instead of the time of day.
      document.setDocumentId(1L);
      document.getDocumentInformation().setTitle("Cut: " + breakdown.station().brief().name());
      ShopSheet book = new ShopSheet(document, breakdown);
      new JobPage(book, breakdown).draw();
      SheetPage page = new SheetPage(book, breakdown);
      for (int number = 1; number <= breakdown.plan().sheets().size(); number++) {
        page.draw(number);
      }
      ByteArrayOutputStream bytes = new ByteArrayOutputStream();
      document.save(bytes);
      bytes.writeTo(out);
      out.flush();
    }
  }
}
