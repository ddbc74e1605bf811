package sawstead.drawing.page;

import java.io.IOException;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import sawstead.measure.Unit;

/** The document that the pages are bound in: paper, faces and the line at the foot. */
public final class Booklet {
  private final PDDocument document;
  private final PDRectangle size;
  private final Face regular;
  private final Face bold;
  private final String name;
  private int pages;

  /**
   * A document without pages: Letter for users of inches, A4 for all others.
   *
   * @param unit of the user
   * @param name of the station, at the foot of each page
   * @throws IOException if the faces are missing
   */
  public Booklet(PDDocument document, Unit unit, String name) throws IOException {
    this.document = document;
    size = unit == Unit.INCH ? PDRectangle.LETTER : PDRectangle.A4;
    regular = Face.regular(document);
    bold = Face.bold(document);
    this.name = name;
  }

  /** One more page, to be closed by who asked for it. */
  public Paper page() throws IOException {
    pages++;
    return new Paper(document, size, regular, bold);
  }

  /** Writes name and number at the foot of the page that was asked for last. */
  public void foot(Paper paper) throws IOException {
    double y = Paper.MARGIN - 6;
    String line = paper.face(false).within(name, 7.5, 300);
    paper.text(line, Paper.MARGIN, y, 7.5, false, Ink.FAINT);
    String page = "page " + pages;
    double width = paper.face(false).width(page, 7.5);
    paper.text(page, paper.width() - Paper.MARGIN - width, y, 7.5, false, Ink.FAINT);
  }
}
