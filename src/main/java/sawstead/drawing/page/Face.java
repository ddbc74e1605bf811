package sawstead.drawing.page;

import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/**
 * A typeface embedded in a document: Liberation Sans (SIL Open Font License 1.1), whose figures are
 * all as wide as each other.
 */
public final class Face {
  /** Size of the small figures of a fraction, and how far those above stand up, in sizes. */
  private static final double SMALL = 0.62;

  static final double RISE = 0.34;

  private final PDFont font;

  private Face(PDFont font) {
    this.font = font;
  }

  static Face regular(PDDocument document) throws IOException {
    return load(document, "LiberationSans-Regular.ttf");
  }

  static Face bold(PDDocument document) throws IOException {
    return load(document, "LiberationSans-Bold.ttf");
  }

  private static Face load(PDDocument document, String file) throws IOException {
    try (InputStream in = Face.class.getResourceAsStream("/liberation/" + file)) {
      if (in == null) {
        throw new IOException("the font " + file + " is missing from the program");
      }
      return new Face(PDType0Font.load(document, in, true));
    }
  }

  PDFont font() {
    return font;
  }

  /** Size of a run set in a size. */
  static double size(Fractions.Run run, double size) {
    return run.rise() == Fractions.Rise.PLAIN ? size : size * SMALL;
  }

  /** Width of a line, points. */
  public double width(String line, double size) throws IOException {
    double width = 0;
    for (Fractions.Run run : Fractions.runs(line)) {
      width += font.getStringWidth(known(run.text())) / 1000 * size(run, size);
    }
    return width;
  }

  /** The text with a question mark for each character that the face lacks. */
  String known(String text) {
    StringBuilder known = new StringBuilder();
    text.codePoints()
        .forEach(
            point -> {
              String one = Character.toString(point);
              try {
                font.encode(one);
                known.append(one);
              } catch (IllegalArgumentException | IOException lacking) {
                known.append('?');
              }
            });
    return known.toString();
  }

  /** The text, cut short with dots where it is wider than allowed. */
  public String within(String line, double size, double room) throws IOException {
    if (width(line, size) <= room) {
      return line;
    }
    String cut = line;
    while (cut.length() > 1 && width(cut + "...", size) > room) {
      cut = cut.substring(0, cut.length() - 1);
    }
    return cut + "...";
  }

  /** The text in lines no wider than allowed, broken between words. */
  public List<String> lines(String text, double size, double room) throws IOException {
    List<String> lines = new ArrayList<>();
    String now = "";
    for (String word : text.split(" ", -1)) {
      String longer = now.isEmpty() ? word : now + " " + word;
      if (!now.isEmpty() && width(longer, size) > room) {
        lines.add(now);
        now = word;
      } else {
        now = longer;
      }
    }
    lines.add(now);
    return lines;
  }
}
