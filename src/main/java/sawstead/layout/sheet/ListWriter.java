package sawstead.layout.sheet;

import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import sawstead.layout.shop.Breakdown;
import sawstead.layout.shop.BreakdownText;
import sawstead.layout.shop.CostLine;
import sawstead.layout.shop.CostList;
import sawstead.layout.shop.CutList;
import sawstead.layout.shop.CutListLine;
import sawstead.layout.shop.HardwareLine;
import sawstead.layout.shop.HardwareList;
import sawstead.measure.LengthFormat;

/**
 * Lists as CSV (RFC 4180), UTF-8: sizes in the user's units as they are read off a tape, and in mm
 * to a hundredth with a decimal point for other programs. Streams are flushed, not closed.
 */
final class ListWriter {
  private ListWriter() {}

  /** What is cut: one line for panels that are alike. */
  static void cutList(Breakdown breakdown, OutputStream out) throws IOException {
    LengthFormat tape = LengthFormat.of(breakdown.station().brief().units());
    CSVPrinter csv =
        open(
            out,
            "parts",
            "quantity",
            "length",
            "width",
            "thickness",
            "grain",
            "joints",
            "edge bands",
            "good side",
            "at guided saw",
            "at table saw",
            "sheet",
            "unit",
            "length mm",
            "width mm",
            "thickness mm",
            "mass kg each");
    for (CutListLine line : CutList.of(breakdown.station())) {
      csv.printRecord(
          String.join(" ", line.parts()),
          line.parts().size(),
          tape.withUnit(line.length()),
          tape.withUnit(line.width()),
          LengthFormat.millimetres().withUnit(line.thickness()),
          "along length",
          line.joints(),
          line.bands(),
          line.good().word(),
          line.good().atGuidedSaw(),
          line.good().atTableSaw(),
          line.sheet(),
          line.unit(),
          plain(line.length()),
          plain(line.width()),
          plain(line.thickness()),
          String.format(Locale.ROOT, "%.3f", line.mass()));
    }
    csv.flush();
  }

  /** What is bought or taken from the shelf. */
  static void hardware(Breakdown breakdown, OutputStream out) throws IOException {
    CSVPrinter csv = open(out, "item", "needed", "take", "note");
    for (HardwareLine line : HardwareList.of(breakdown.station())) {
      csv.printRecord(line.item(), line.needed(), line.take(), line.note());
    }
    csv.flush();
  }

  /** What the sheets cost; a price that is not known is left empty. */
  static void cost(Breakdown breakdown, OutputStream out) throws IOException {
    CSVPrinter csv = open(out, "item", "count", "each", "sum");
    List<CostLine> lines = CostList.of(breakdown);
    for (CostLine line : lines) {
      csv.printRecord(
          line.stock(),
          line.count(),
          BreakdownText.money(line.each(), ""),
          BreakdownText.money(line.sum(), ""));
    }
    csv.printRecord("all sheets", "", "", BreakdownText.money(CostList.sum(lines), ""));
    csv.flush();
  }

  private static CSVPrinter open(OutputStream out, String... header) throws IOException {
    Writer text = new OutputStreamWriter(out, StandardCharsets.UTF_8);
    return new CSVPrinter(text, CSVFormat.RFC4180.builder().setHeader(header).get());
  }

  private static String plain(double millimetres) {
    return LengthFormat.millimetres().text(millimetres);
  }
}
