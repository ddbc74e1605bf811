package sawstead.layout.sheet;

import java.io.IOException;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import sawstead.layout.shop.Breakdown;
import sawstead.measure.Unit;

/** The document that the pages are bound in: paper, faces and the line at the foot. */
final class ShopSheet {
  private final PDDocument document;
  private final PDRectangle size;
  private final Face regular;
  private final Face bold;
  private final String name;
  private int pages;

  /** A document without pages: Letter for users of inches, A4 for all others. */
  ShopSheet(PDDocument document, Breakdown breakdown) throws IOException {
    this.document = document;
    size = breakdown.station().brief().units() == Unit.INCH ? PDRectangle.LETTER : PDRectangle.A4;
    regular = Face.regular(document);
    bold = Face.bold(document);
    name = breakdown.station().brief().name();
  }

  Paper page() throws IOException {
    pages++;
    return new Paper(document, size, regular, bold);
  }

  void foot(Paper paper) throws IOException {
    double y = Paper.MARGIN - 6;
    String line = paper.face(false).within(name, 7.5, 300);
    paper.text(line, Paper.MARGIN, y, 7.5, false, Ink.FAINT);
    String page = "page " + pages;
    double width = paper.face(false).width(page, 7.5);
    paper.text(page, paper.width() - Paper.MARGIN - width, y, 7.5, false, Ink.FAINT);
  }
}
