package sawstead.layout.sheet;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import sawstead.layout.PlacedPiece;
import sawstead.layout.SheetPlan;
import sawstead.layout.shop.Breakdown;
import sawstead.layout.shop.Breakdowns;
import sawstead.layout.shop.CutPiece;
import sawstead.layout.shop.ShopStep;
import sawstead.measure.Unit;
import sawstead.outside.OutsideTool;
import sawstead.station.Briefs;

/** The files of a breakdown say what the plan says, to readers that are not ours. */
class SheetFilesTest {
  @TempDir Path folder;

  @TestFactory
  Stream<DynamicTest> files_ofDemos() {
    return Briefs.demos().stream()
        .flatMap(
            file -> {
              Breakdown breakdown = Breakdowns.demo(file);
              Map<String, byte[]> files = files(breakdown);
              return Stream.of(
                  dynamicTest(file + ": svg", () -> svg(breakdown, files)),
                  dynamicTest(file + ": dxf", () -> dxf(breakdown, files)),
                  dynamicTest(file + ": shop sheet", () -> shopSheet(breakdown, files)),
                  dynamicTest(file + ": sheet book", () -> book(breakdown, files)),
                  dynamicTest(file + ": lists", () -> lists(breakdown, files)),
                  dynamicTest(file + ": again", () -> again(files, files(breakdown))));
            });
  }

  /**
   * The good side is down where teeth come out at the top and up where they come out at the bottom:
   * common practice, no source. Counted in the text of the PDF.
   */
  @Test
  void goodSide_isSaidAtEveryCutAndPart() throws Exception {
    Breakdown breakdown =
        Breakdowns.of(
            """
            name: Faces
            units: mm
            stock:
              - {name: fine, length: 2440, width: 1220, thickness: 18, good: back}
              - {name: plain, length: 2440, width: 1220, thickness: 12, good: both}
            extras:
              - {id: a, stock: fine, outline: [[0,0],[600,0],[600,300],[0,300]], place: {at: [0,0,0]}}
              - {id: b, stock: plain, outline: [[0,0],[500,0],[500,200],[0,200]], place: {at: [0,0,99]}}
            """);
    Map<String, byte[]> files = files(breakdown);
    StepWords words = new StepWords(breakdown);
    long fine = 0;
    for (ShopStep step : breakdown.steps()) {
      boolean isFine = breakdown.plan().sheets().get(step.sheet() - 1).stock().equals("fine");
      fine += isFine ? 1 : 0;
      String wanted = step.isMarked() ? "back down" : "back up";
      assertEquals(isFine ? wanted : "", words.face(step), "cut " + step.cut().order());
    }
    assertTrue(fine > 0 && fine < breakdown.steps().size(), "cuts in both sheets");
    for (String file : List.of("shop-sheet.pdf", "sheet-book.pdf")) {
      try (PDDocument document = Loader.loadPDF(files.get(file))) {
        String text = new PDFTextStripper().getText(document);
        assertEquals(fine, text.split(", back (up|down)", -1).length - 1, file);
        assertFalse(text.contains("front up") || text.contains("front down"), file);
      }
    }
    for (CSVRecord line : cutList(files)) {
      boolean isFine = line.get("sheet").equals("fine");
      assertEquals(isFine ? "back" : "both", line.get("good side"));
      assertEquals(isFine ? "back down" : "", line.get("at guided saw"));
      assertEquals(isFine ? "back up" : "", line.get("at table saw"));
    }
  }

  private static Map<String, byte[]> files(Breakdown breakdown) {
    Map<String, ByteArrayOutputStream> open = new TreeMap<>();
    try {
      BreakdownFiles.write(
          breakdown, name -> open.computeIfAbsent(name, n -> new ByteArrayOutputStream()));
    } catch (IOException e) {
      throw new AssertionError(e);
    }
    Map<String, byte[]> files = new TreeMap<>();
    open.forEach((name, bytes) -> files.put(name, bytes.toByteArray()));
    return files;
  }

  private static void again(Map<String, byte[]> first, Map<String, byte[]> second) {
    assertEquals(first.keySet(), second.keySet());
    first.forEach((name, bytes) -> assertArrayEquals(bytes, second.get(name), name));
  }

  /** The XML reader of the Java platform finds the areas of the plan. */
  private static void svg(Breakdown breakdown, Map<String, byte[]> files) throws Exception {
    for (int i = 0; i < breakdown.plan().sheets().size(); i++) {
      SheetPlan sheet = breakdown.plan().sheets().get(i);
      Element root =
          DocumentBuilderFactory.newInstance()
              .newDocumentBuilder()
              .parse(new ByteArrayInputStream(files.get("sheet-" + (i + 1) + ".svg")))
              .getDocumentElement();
      Map<String, Double> parts = new TreeMap<>();
      double kerfs = 0;
      NodeList rectangles = root.getElementsByTagName("rect");
      for (int n = 0; n < rectangles.getLength(); n++) {
        Element rectangle = (Element) rectangles.item(n);
        double area = number(rectangle, "width") * number(rectangle, "height");
        String kind = rectangle.getAttribute("class");
        if (kind.equals("part")) {
          parts.put(rectangle.getAttribute("data-part"), area);
        } else if (kind.startsWith("kerf")) {
          kerfs += area;
        } else if (kind.equals("sheet")) {
          assertEquals(sheet.length() * sheet.width(), area, 1);
        }
        double top = number(rectangle, "y");
        assertTrue(top > -1e-3 && top + number(rectangle, "height") < sheet.width() + 1e-3);
      }
      assertEquals(sheet.pieces().size(), parts.size());
      for (PlacedPiece piece : sheet.pieces()) {
        assertEquals(piece.length() * piece.width(), parts.get(piece.part()), 2, piece.part());
      }
      double most = 0;
      for (sawstead.layout.Cut cut : sheet.cuts()) {
        most += breakdown.request().kerfs().of(cut.guide().tool()) * (cut.to() - cut.from());
      }
      assertTrue(kerfs > 0.5 * most && kerfs <= most + 1, kerfs + " of " + most);
    }
  }

  private static double number(Element element, String attribute) {
    return Double.parseDouble(element.getAttribute(attribute));
  }

  /** ezdxf finds no fault and the areas of the plan. */
  private void dxf(Breakdown breakdown, Map<String, byte[]> files) throws IOException {
    double unit = breakdown.station().brief().units() == Unit.INCH ? 25.4 : 1;
    for (int i = 0; i < breakdown.plan().sheets().size(); i++) {
      Path file = folder.resolve("sheet-" + (i + 1) + ".dxf");
      Files.write(file, files.get("sheet-" + (i + 1) + ".dxf"));
      JsonNode answer = OutsideTool.python("read_dxf.py", file).json().get(0);
      assertEquals(0, answer.get("faults").size(), answer.get("faults").toString());
      assertEquals(0, answer.get("repairs").size(), answer.get("repairs").toString());
      JsonNode layers = answer.get("layers");
      List<Double> found = new ArrayList<>();
      layers.get("part").get("areas").forEach(a -> found.add(Math.abs(a.asDouble()) * unit * unit));
      SheetPlan sheet = breakdown.plan().sheets().get(i);
      List<Double> wanted =
          sheet.pieces().stream().map(p -> p.length() * p.width()).sorted().toList();
      found.sort(null);
      assertEquals(wanted.size(), found.size());
      for (int n = 0; n < wanted.size(); n++) {
        assertEquals(wanted.get(n), found.get(n), 0.01);
      }
      int kerfs = 0;
      for (Map.Entry<String, JsonNode> layer : layers.properties()) {
        if (layer.getKey().startsWith("kerf-")) {
          kerfs += layer.getValue().get("areas").size();
        }
      }
      assertEquals(sheet.cuts().size(), kerfs);
    }
  }

  /** Every panel's name can be read on its sheet's pages; all fonts are in the file. */
  private static void book(Breakdown breakdown, Map<String, byte[]> files) throws IOException {
    try (PDDocument document = Loader.loadPDF(files.get("sheet-book.pdf"))) {
      PDFTextStripper stripper = new PDFTextStripper();
      Map<Integer, StringBuilder> sheets = new TreeMap<>();
      int sheet = 0;
      for (int page = 1; page <= document.getNumberOfPages(); page++) {
        stripper.setStartPage(page);
        stripper.setEndPage(page);
        String text = stripper.getText(document);
        for (int n = 1; n <= breakdown.plan().sheets().size(); n++) {
          sheet = text.contains("Sheet " + n + " of ") ? n : sheet;
        }
        sheets.computeIfAbsent(sheet, s -> new StringBuilder()).append(text);
      }
      for (int n = 1; n <= breakdown.plan().sheets().size(); n++) {
        String text = sheets.get(n).toString();
        for (PlacedPiece piece : breakdown.plan().sheets().get(n - 1).pieces()) {
          assertTrue(text.contains(piece.part()), piece.part() + " is missing on sheet " + n);
        }
      }
      numbersOfSettings(breakdown, sheets.get(0).toString());
      for (PDPage page : document.getPages()) {
        for (var name : page.getResources().getFontNames()) {
          assertTrue(page.getResources().getFont(name).isEmbedded());
        }
      }
      assertFalse(document.isEncrypted());
    }
  }

  /** The book numbers the settings that the plan counts, and no rail cut in between. */
  private static void numbersOfSettings(Breakdown breakdown, String pages) {
    Set<Integer> numbers = new TreeSet<>();
    Matcher number = Pattern.compile("(?m)^(\\d+)\\.\\s*(?:fence|sled)").matcher(pages);
    while (number.find()) {
      numbers.add(Integer.parseInt(number.group(1)));
    }
    assertEquals(breakdown.plan().settings(), numbers.size(), pages);
    assertFalse(Pattern.compile("\\d+\\.\\s*guided saw").matcher(pages).find(), pages);
  }

  /** One page, with every cut's number, every panel's name and every setting in order. */
  private static void shopSheet(Breakdown breakdown, Map<String, byte[]> files) throws IOException {
    try (PDDocument document = Loader.loadPDF(files.get("shop-sheet.pdf"))) {
      assertEquals(1, document.getNumberOfPages());
      String text = new PDFTextStripper().getText(document);
      StepWords words = new StepWords(breakdown);
      int settings = 0;
      String above = "";
      for (ShopStep step : breakdown.steps()) {
        for (CutPiece piece : List.of(step.near(), step.far())) {
          assertTrue(text.contains(piece.name()), piece.name());
        }
        if (!step.isMarked() && !words.setting(step).equals(above)) {
          settings++;
          assertTrue(text.contains(settings + ".  "), "setting " + settings);
        }
        above = step.isMarked() ? above : words.setting(step);
      }
      assertEquals(breakdown.plan().settings(), settings);
      // A sheet of A4 or Letter, or two side by side: both sides below 18 in.
      assertTrue(document.getPage(0).getMediaBox().getWidth() <= 18 * 72);
    }
  }

  private static List<CSVRecord> cutList(Map<String, byte[]> files) throws IOException {
    return CSVFormat.RFC4180
        .builder()
        .setHeader()
        .setSkipHeaderRecord(true)
        .get()
        .parse(
            new java.io.StringReader(
                new String(files.get("cut-list.csv"), java.nio.charset.StandardCharsets.UTF_8)))
        .getRecords();
  }

  private static void lists(Breakdown breakdown, Map<String, byte[]> files) throws IOException {
    List<CSVRecord> lines = cutList(files);
    int quantity = 0;
    for (CSVRecord line : lines) {
      quantity += Integer.parseInt(line.get("quantity"));
      assertEquals(Integer.parseInt(line.get("quantity")), line.get("parts").split(" ").length);
    }
    assertEquals(breakdown.station().boards().size(), quantity);
    JsonNode json = new ObjectMapper().readTree(files.get("breakdown.json"));
    assertEquals("sawstead-breakdown/1", json.get("format").asText());
    assertEquals(breakdown.plan().lowerBound(), json.get("lowerBound").asInt());
  }
}
