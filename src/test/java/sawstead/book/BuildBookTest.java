package sawstead.book;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import sawstead.assembly.BuildStep;
import sawstead.check.Inspector;
import sawstead.check.Report;
import sawstead.intake.BriefReader;
import sawstead.measure.Unit;
import sawstead.station.Briefs;
import sawstead.station.unit.Units;

/** The book says what the plan says, to the reader of a library that is not ours (PDFBox). */
class BuildBookTest {
  private static final Pattern COUNTED =
      Pattern.compile("(\\d+) x (?:wood screw|pocket screw|brad|bolt)");

  private static Report report(Path file) throws Exception {
    return Inspector.inspect(Units.station(BriefReader.read(file)));
  }

  private static byte[] book(Report report) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    BuildBook.write(report, out);
    return out.toByteArray();
  }

  /** The words of some pages, with any blanks between them as one. */
  private static String words(PDDocument document, int from, int to) throws IOException {
    PDFTextStripper stripper = new PDFTextStripper();
    stripper.setSortByPosition(false);
    stripper.setStartPage(from);
    stripper.setEndPage(to);
    return stripper.getText(document).replaceAll("[\\s\u00a0]+", " ");
  }

  private static int firstOfPanels(PDDocument document) throws IOException {
    for (int page = 1; page <= document.getNumberOfPages(); page++) {
      if (words(document, page, page).contains("Panels, each seen on its front")) {
        return page;
      }
    }
    throw new AssertionError("no page of panels");
  }

  @TestFactory
  Stream<DynamicTest> demo_hasEveryStepFastenerAndPanelOnce() {
    return Briefs.demos().stream().map(file -> dynamicTest(file.toString(), () -> complete(file)));
  }

  private void complete(Path file) throws Exception {
    Report report = report(file);
    try (PDDocument document = Loader.loadPDF(book(report))) {
      int panels = firstOfPanels(document);
      String steps = words(document, 2, panels - 1);
      for (BuildStep step : report.plan().steps()) {
        assertEquals(1, count(steps, " " + step.number() + ". " + step.name() + " "), step.name());
      }
      int fasteners = 0;
      for (Matcher counted = COUNTED.matcher(steps); counted.find(); ) {
        fasteners += Integer.parseInt(counted.group(1));
      }
      assertEquals(report.station().fasteners().size(), fasteners);
      String cards = words(document, panels, document.getNumberOfPages()) + " ";
      for (String board : report.station().boards().keySet()) {
        assertEquals(1, Pattern.compile("[ ,]" + board + "[ ,]").matcher(cards).results().count());
      }
      boolean inches = report.station().brief().units() == Unit.INCH;
      PDRectangle size = document.getPage(0).getMediaBox();
      assertEquals(
          (inches ? PDRectangle.LETTER : PDRectangle.A4).getHeight(), size.getHeight(), 0.1);
    }
  }

  private static int count(String text, String part) {
    int count = 0;
    for (int at = (" " + text).indexOf(part); at >= 0; at = (" " + text).indexOf(part, at + 1)) {
      count++;
    }
    return count;
  }

  @Test
  void sameReport_sameBytes() throws Exception {
    Report report = report(Path.of("models/first-brief.yaml"));
    assertArrayEquals(book(report), book(report));
  }

  @Test
  void stationThatMustNotBeCut_saysSoOnTheFirstPage() throws Exception {
    Report report = report(Path.of("models/flawed/shelf-over-lid.yaml"));
    assertTrue(report.forbidsCutting());
    try (PDDocument document = Loader.loadPDF(book(report))) {
      assertTrue(words(document, 1, 1).contains("do not cut"));
    }
  }

  @Test
  void stationOfManyWordsAndOddLetters_isABookAllTheSame() throws Exception {
    String text = Files.readString(Path.of("models/first-brief.yaml"));
    String name = "W\u00e4rkstatt \u5de5\u623f " + "very ".repeat(8) + "long";
    String odd = text.replaceFirst("name: .*", "name: \"" + name + "\"");
    Report report =
        Inspector.inspect(
            Units.station(BriefReader.read("odd", odd.getBytes(StandardCharsets.UTF_8))));
    try (PDDocument document = Loader.loadPDF(book(report))) {
      assertTrue(words(document, 1, 1).contains("W\u00e4rkstatt ??"), words(document, 1, 1));
    }
  }
}
