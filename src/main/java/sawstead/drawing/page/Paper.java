package sawstead.drawing.page;

import java.awt.image.BufferedImage;
import java.io.IOException;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.graphics.image.LosslessFactory;
import org.apache.pdfbox.pdmodel.graphics.image.PDImageXObject;
import org.apache.pdfbox.util.Matrix;

/**
 * A page that is being drawn: points, origin at the lower left, y up (REF-FIL-18: a point is 1/72
 * in).
 */
public final class Paper implements AutoCloseable {
  /** Free all round, points: half an inch, which every printer reaches. */
  public static final double MARGIN = 36;

  private final PDDocument document;
  private final PDPageContentStream stream;
  private final PDRectangle size;
  private final Face regular;
  private final Face bold;

  Paper(PDDocument document, PDRectangle size, Face regular, Face bold) throws IOException {
    PDPage page = new PDPage(size);
    document.addPage(page);
    this.document = document;
    this.size = size;
    this.regular = regular;
    this.bold = bold;
    stream = new PDPageContentStream(document, page);
  }

  /**
   * One more page of a document, with faces of its own.
   *
   * @throws IOException if the faces are missing
   */
  public static Paper of(PDDocument document, PDRectangle size) throws IOException {
    return new Paper(document, size, Face.regular(document), Face.bold(document));
  }

  /** Width, points. */
  public double width() {
    return size.getWidth();
  }

  /** Height, points. */
  public double height() {
    return size.getHeight();
  }

  /** The bold face or the regular one. */
  public Face face(boolean heavy) {
    return heavy ? bold : regular;
  }

  /** A line of text from its lower left corner; returns where it ends. */
  public double text(String line, double x, double y, double size, boolean heavy, Ink ink)
      throws IOException {
    return text(line, Matrix.getTranslateInstance((float) x, (float) y), size, heavy, ink) + x;
  }

  /** A line of text that reads upwards, from its lower left corner. */
  public void textUpwards(String line, double x, double y, double size, boolean heavy, Ink ink)
      throws IOException {
    text(line, new Matrix(0, 1, -1, 0, (float) x, (float) y), size, heavy, ink);
  }

  private double text(String line, Matrix at, double size, boolean heavy, Ink ink)
      throws IOException {
    Face face = face(heavy);
    stream.beginText();
    fill(ink);
    stream.setTextMatrix(at);
    for (Fractions.Run run : Fractions.runs(line)) {
      stream.setFont(face.font(), (float) Face.size(run, size));
      stream.setTextRise(run.rise() == Fractions.Rise.ABOVE ? (float) (size * Face.RISE) : 0);
      stream.showText(face.known(run.text()));
    }
    stream.setTextRise(0);
    stream.endText();
    return face.width(line, size);
  }

  /** A filled rectangle. */
  public void fill(double x, double y, double width, double height, Ink ink) throws IOException {
    fill(ink);
    stream.addRect((float) x, (float) y, (float) width, (float) height);
    stream.fill();
  }

  /** A rectangle's edge; dashed when {@code dash} is more than 0 points. */
  public void edge(
      double x, double y, double width, double height, double weight, double dash, Ink ink)
      throws IOException {
    stroke(weight, dash, ink);
    stream.addRect((float) x, (float) y, (float) width, (float) height);
    stream.stroke();
  }

  /** A straight line. */
  public void line(double x0, double y0, double x1, double y1, double weight, Ink ink)
      throws IOException {
    stroke(weight, 0, ink);
    stream.moveTo((float) x0, (float) y0);
    stream.lineTo((float) x1, (float) y1);
    stream.stroke();
  }

  /** A filled polygon with an edge of white, so that it stands out from what lies below. */
  public void polygon(double[] xy, Ink ink) throws IOException {
    fill(ink);
    stroke(0.6, 0, Ink.CHALK);
    stream.moveTo((float) xy[0], (float) xy[1]);
    for (int i = 2; i < xy.length; i += 2) {
      stream.lineTo((float) xy[i], (float) xy[i + 1]);
    }
    stream.closePath();
    stream.fillAndStroke();
  }

  /** Straight lines from point to point, x and y in turn, as one. */
  public void path(double[] xy, double weight, Ink ink) throws IOException {
    stroke(weight, 0, ink);
    stream.setLineCapStyle(1);
    stream.setLineJoinStyle(1);
    stream.moveTo((float) xy[0], (float) xy[1]);
    for (int i = 2; i < xy.length; i += 2) {
      stream.lineTo((float) xy[i], (float) xy[i + 1]);
    }
    stream.stroke();
    stream.setLineCapStyle(0);
    stream.setLineJoinStyle(0);
  }

  /**
   * A closed shape.
   *
   * @param xy corners, x and y in turn
   * @param dash points; 0 for a whole line
   * @param within colour of what is in it; null to leave what lies below
   */
  public void shape(double[] xy, double weight, double dash, Ink ink, Ink within)
      throws IOException {
    stroke(weight, dash, ink);
    stream.moveTo((float) xy[0], (float) xy[1]);
    for (int i = 2; i < xy.length; i += 2) {
      stream.lineTo((float) xy[i], (float) xy[i + 1]);
    }
    stream.closePath();
    if (within == null) {
      stream.stroke();
    } else {
      fill(within);
      stream.fillAndStroke();
    }
  }

  /** A picture stretched over a rectangle. */
  public void picture(BufferedImage image, double x, double y, double width, double height)
      throws IOException {
    PDImageXObject drawn = LosslessFactory.createFromImage(document, image);
    stream.drawImage(drawn, (float) x, (float) y, (float) width, (float) height);
  }

  private void fill(Ink ink) throws IOException {
    float[] parts = ink.parts();
    stream.setNonStrokingColor(parts[0], parts[1], parts[2]);
  }

  private void stroke(double weight, double dash, Ink ink) throws IOException {
    float[] parts = ink.parts();
    stream.setStrokingColor(parts[0], parts[1], parts[2]);
    stream.setLineWidth((float) weight);
    stream.setLineDashPattern(dash > 0 ? new float[] {(float) dash} : new float[0], 0);
  }

  @Override
  public void close() throws IOException {
    stream.close();
  }
}
