package sawstead.drawing.page;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import org.apache.pdfbox.pdmodel.PDDocument;

/** A document as a PDF file; the same content gives the same bytes. */
public final class PdfFile {
  private PdfFile() {}

  /** Content of one document. */
  @FunctionalInterface
  public interface Content {
    /** Adds its pages. */
    void draw(PDDocument document) throws IOException;
  }

  /**
   * Writes a document. The stream is flushed, not closed.
   *
   * @throws IOException if it cannot be written
   */
  public static void write(String title, OutputStream out, Content content) throws IOException {
    try (PDDocument document = new PDDocument()) {
      // A fixed id instead of the time of day.
      document.setDocumentId(1L);
      document.getDocumentInformation().setTitle(title);
      content.draw(document);
      ByteArrayOutputStream bytes = new ByteArrayOutputStream();
      document.save(bytes);
      bytes.writeTo(out);
      out.flush();
    }
  }
}
