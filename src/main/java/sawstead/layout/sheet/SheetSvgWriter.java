package sawstead.layout.sheet;

import java.io.IOException;
import java.io.OutputStream;
import java.util.Locale;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;
import sawstead.drawing.page.Ink;

/**
 * A sheet as SVG in its true size: one unit is one millimetre, the lower left corner of the sheet
 * is the lower left of the picture. Classes say what a rectangle is: {@code sheet}, {@code part},
 * {@code offcut}, {@code defect}, {@code kerf seller}, {@code kerf rail}, {@code kerf packed-rail},
 * {@code kerf fence}, {@code kerf sled}; {@code data-part}, {@code data-order} and {@code
 * data-setting} (mm) say which.
 */
final class SheetSvgWriter {
  private static final String SPACE = "http://www.w3.org/2000/svg";

  /** Names are no taller than this, mm, and no smaller than a tenth of it. */
  private static final double TALLEST = 32;

  private final SheetScene scene;
  private final XMLStreamWriter xml;

  private SheetSvgWriter(SheetScene scene, XMLStreamWriter xml) {
    this.scene = scene;
    this.xml = xml;
  }

  /** Writes a sheet; the stream is flushed, not closed. */
  static void write(SheetScene scene, OutputStream out) throws IOException {
    try {
      XMLStreamWriter xml = XMLOutputFactory.newFactory().createXMLStreamWriter(out, "UTF-8");
      new SheetSvgWriter(scene, xml).write();
      xml.flush();
    } catch (XMLStreamException e) {
      throw new IOException(e);
    }
  }

  private void write() throws XMLStreamException {
    xml.writeStartDocument("UTF-8", "1.0");
    xml.writeStartElement("svg");
    xml.writeDefaultNamespace(SPACE);
    xml.writeAttribute("width", figure(scene.length()) + "mm");
    xml.writeAttribute("height", figure(scene.width()) + "mm");
    xml.writeAttribute("viewBox", "0 0 " + figure(scene.length()) + " " + figure(scene.width()));
    words("title", "sheet " + scene.number() + ": " + scene.stock());
    words("style", style());
    rectangle("sheet", 0, 0, scene.length(), scene.width());
    xml.writeEndElement();
    for (Shape.Rest rest : scene.rests()) {
      rectangle("offcut", rest);
      xml.writeEndElement();
    }
    for (Shape.Panel panel : scene.panels()) {
      rectangle("part", panel);
      xml.writeAttribute("data-part", panel.name());
      xml.writeEndElement();
      name(panel);
    }
    for (Shape.Flaw flaw : scene.flaws()) {
      rectangle("defect", flaw);
      xml.writeEndElement();
    }
    for (Shape.Kerf kerf : scene.kerfs()) {
      kerf(kerf);
    }
    xml.writeEndElement();
    xml.writeEndDocument();
  }

  private static String style() {
    return "rect{stroke:none}"
        + (".sheet{fill:#" + Ink.DUST.hex() + "}")
        + (".part{fill:#" + Ink.BIRCH.hex() + "}")
        + (".offcut{fill:#" + Ink.LICHEN.hex() + "}")
        + (".rail,.packed-rail{fill:#" + Ink.INK.hex() + "}")
        + (".seller{fill:#" + Ink.MOSS.hex() + "}")
        + (".defect{fill:none;stroke:#" + Ink.VERMILION.hex() + ";stroke-width:2}")
        + (".fence{fill:#" + Ink.COBALT.hex() + "}")
        + (".sled{fill:#" + Ink.OCHRE.hex() + "}")
        + ("text{font-family:sans-serif;text-anchor:middle;fill:#" + Ink.INK.hex() + "}")
        + (".number{font-weight:bold;stroke:#" + Ink.CHALK.hex() + ";stroke-width:4;")
        + "paint-order:stroke}";
  }

  private void kerf(Shape.Kerf kerf) throws XMLStreamException {
    String guide = kerf.guide().name().toLowerCase(Locale.ROOT).replace('_', '-');
    rectangle("kerf " + guide, kerf);
    xml.writeAttribute("data-order", Integer.toString(kerf.order()));
    if (!Double.isNaN(kerf.setting())) {
      xml.writeAttribute("data-setting", figure(kerf.setting()));
    }
    xml.writeEndElement();
    double x = kerf.alongLength() ? kerf.x() + 18 : kerf.x();
    double y = kerf.alongLength() ? kerf.y() : kerf.y() + 24;
    text("number", Integer.toString(kerf.order()), x, y - 6, 18, false);
  }

  private void name(Shape.Panel panel) throws XMLStreamException {
    boolean upright = panel.width() > panel.length();
    double run = Math.max(panel.length(), panel.width()) * 0.9;
    double room = Math.min(panel.length(), panel.width()) * 0.6;
    // A letter of a sans face is about 0.55 of its size wide.
    double size = Math.min(TALLEST, Math.min(room, run / (0.55 * panel.name().length())));
    text(
        "name",
        panel.name(),
        panel.x() + panel.length() / 2 + (upright ? size / 3 : 0),
        panel.y() + panel.width() / 2 - (upright ? 0 : size / 3),
        Math.max(TALLEST / 10, size),
        upright);
  }

  private void text(String kind, String words, double x, double y, double size, boolean upright)
      throws XMLStreamException {
    String at = figure(x) + " " + figure(scene.width() - y);
    xml.writeStartElement("text");
    xml.writeAttribute("class", kind);
    xml.writeAttribute("font-size", figure(size));
    xml.writeAttribute("transform", "translate(" + at + ")" + (upright ? " rotate(-90)" : ""));
    xml.writeCharacters(words);
    xml.writeEndElement();
  }

  private void rectangle(String kind, Shape shape) throws XMLStreamException {
    rectangle(kind, shape.x(), shape.y(), shape.length(), shape.width());
  }

  private void rectangle(String kind, double x, double y, double length, double width)
      throws XMLStreamException {
    xml.writeStartElement("rect");
    xml.writeAttribute("class", kind);
    xml.writeAttribute("x", figure(x));
    xml.writeAttribute("y", figure(scene.width() - y - width));
    xml.writeAttribute("width", figure(length));
    xml.writeAttribute("height", figure(width));
  }

  private void words(String element, String words) throws XMLStreamException {
    xml.writeStartElement(element);
    xml.writeCharacters(words);
    xml.writeEndElement();
  }

  /** To a thousandth of a millimetre, plainly. */
  private static String figure(double value) {
    java.math.BigDecimal rounded =
        java.math.BigDecimal.valueOf(value).setScale(3, java.math.RoundingMode.HALF_EVEN);
    return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
  }
}
