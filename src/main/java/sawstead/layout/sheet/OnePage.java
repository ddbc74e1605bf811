package sawstead.layout.sheet;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import sawstead.drawing.page.Ink;
import sawstead.drawing.page.Paper;
import sawstead.layout.Guide;
import sawstead.layout.shop.Breakdown;
import sawstead.layout.shop.BreakdownText;
import sawstead.measure.Unit;

/**
 * The whole job on one page: what to mind, the sheets to scale, every cut in order with a box to
 * tick. Letter or A4; twice as large where the cuts would be too small to read.
 */
final class OnePage {
  private static final double SMALL = 7.2;

  /** Letters of the table smaller than this are hard to read at arm's length, points. */
  private static final double LEAST = 5.8;

  private final Breakdown breakdown;
  private final StepWords words;
  private final Paper paper;

  private OnePage(Breakdown breakdown, StepWords words, Paper paper) {
    this.breakdown = breakdown;
    this.words = words;
    this.paper = paper;
  }

  static void draw(PDDocument document, Breakdown breakdown) throws IOException {
    boolean inches = breakdown.station().brief().units() == Unit.INCH;
    PDRectangle usual = inches ? PDRectangle.LETTER : PDRectangle.A4;
    StepWords words = new StepWords(breakdown);
    CutColumns columns = new CutColumns(words, CutRow.of(breakdown, words));
    try (PDDocument trial = new PDDocument()) {
      usual = small(trial, usual, breakdown, words, columns) ? large(usual) : usual;
    }
    try (Paper paper = Paper.of(document, usual)) {
      OnePage page = new OnePage(breakdown, words, paper);
      double y = page.figures(page.title(paper.height() - Paper.MARGIN));
      columns.draw(paper, columns.columns(paper, y - Paper.MARGIN), y, Paper.MARGIN);
    }
  }

  /** Whether the letters of the table would be too small; tried on paper thrown away. */
  private static boolean small(
      PDDocument trial, PDRectangle size, Breakdown breakdown, StepWords words, CutColumns columns)
      throws IOException {
    try (Paper paper = Paper.of(trial, size)) {
      OnePage page = new OnePage(breakdown, words, paper);
      double y = page.figures(page.title(paper.height() - Paper.MARGIN)) - Paper.MARGIN;
      return columns.size(paper, columns.columns(paper, y), y) < LEAST;
    }
  }

  /** Two sheets of paper side by side. */
  private static PDRectangle large(PDRectangle size) {
    return new PDRectangle(2 * size.getWidth(), size.getHeight());
  }

  private double title(double top) throws IOException {
    double y = top - 13;
    double room = paper.width() - 2 * Paper.MARGIN;
    String name = "Cut: " + breakdown.station().brief().name();
    double x =
        paper.text(paper.face(true).within(name, 16, room), Paper.MARGIN, y, 16, true, Ink.INK);
    String verdict = BreakdownText.verdict(breakdown);
    if (x + 12 + paper.face(false).width(verdict, 8) > paper.width() - Paper.MARGIN) {
      y -= 11;
      x = Paper.MARGIN - 12;
    }
    paper.text(paper.face(false).within(verdict, 8, room), x + 12, y, 8, false, Ink.FAINT);
    y -= 3;
    if (breakdown.forbidden()) {
      y =
          line(
              "STOP: do not cut. The station has findings that forbid it: run check first.",
              y,
              Ink.VERMILION);
    }
    for (String caution : breakdown.plan().cautions()) {
      y = line("Mind: " + caution, y, Ink.VERMILION);
    }
    for (String rule : rules()) {
      y = line(rule, y, Ink.INK);
    }
    return legend(y - 12) - 4;
  }

  /** Common practice, no source. */
  private List<String> rules() {
    return List.of(
        "Unplug before you set blade or fence. Glasses, ears, mask, vac. Guard and riving knife stay on. Hands 150 mm"
            + " from the blade. The fence is never a stop for a crosscut.",
        "Kerfs: guided saw "
            + words.both(breakdown.request().kerfs().guided())
            + ", table saw "
            + words.both(breakdown.request().kerfs().table())
            + "; cut on the far side of the mark. First a test cut in scrap: measure it. Good side down under the guided"
            + " saw, up at the table saw: each cut says which face that is.",
        "Measure from the marked corner, grain left to right. Pencil 1a, 1b ... and each name on its piece as it comes"
            + " off. First all guided cuts, then setting after setting, each once.");
  }

  private double line(String text, double y, Ink ink) throws IOException {
    double next = y;
    for (String part : paper.face(false).lines(text, SMALL, paper.width() - 2 * Paper.MARGIN)) {
      next -= SMALL + 2;
      paper.text(part, Paper.MARGIN, next, SMALL, false, ink);
    }
    return next;
  }

  private double legend(double y) throws IOException {
    double x = Paper.MARGIN;
    for (Guide guide : Tag.legend(breakdown)) {
      Tag.draw(paper, guide, 1, x + 5, y + 2.4, 4.2);
      String says =
          switch (guide) {
            case SELLER -> "at the seller's, before it goes home";
            case RAIL, PACKED_RAIL -> "guided saw, work flat on boards, rail clamped";
            case FENCE -> "table saw along the fence, stand aside of the kerf";
            case SLED -> "table saw, sled with a stop block";
          };
      x = paper.text(says, x + 13, y, SMALL, false, Ink.INK) + 14;
    }
    return y;
  }

  /** The sheets side by side as large as a good third of the page allows. */
  private double figures(double top) throws IOException {
    List<SheetScene> scenes = new ArrayList<>();
    for (int i = 1; i <= breakdown.plan().sheets().size(); i++) {
      scenes.add(SheetScene.of(breakdown, i));
    }
    double room = paper.width() - 2 * Paper.MARGIN;
    double high = paper.height() * (scenes.size() > 2 ? 0.4 : 0.3);
    double longest = scenes.stream().mapToDouble(SheetScene::length).max().orElse(1);
    double widest = scenes.stream().mapToDouble(SheetScene::width).max().orElse(1);
    int beside = 1;
    double scale = 0;
    for (int n = 1; n <= scenes.size(); n++) {
      int rows = (scenes.size() + n - 1) / n;
      double s = Math.min((room / n - 16) / longest, (high / rows - 26) / widest);
      if (s > scale) {
        scale = s;
        beside = n;
      }
    }
    double y = top;
    List<String> told = new ArrayList<>();
    for (int i = 0; i < scenes.size(); i += beside) {
      double next = y;
      for (int k = i; k < Math.min(i + beside, scenes.size()); k++) {
        SheetScene scene = scenes.get(k);
        double left = Paper.MARGIN + 14 + (k - i) * room / beside;
        double bottom = y - 14 - scene.width() * scale;
        paper.text("sheet " + scene.number(), left, y - 9, 8, true, Ink.INK);
        for (String line :
            new SheetFigure(
                    paper, scene, breakdown.words(), left, bottom, scale, SheetFigure.Numbers.RAIL)
                .draw()) {
          told.add("sheet " + scene.number() + " " + line);
        }
        next = Math.min(next, bottom - 16);
      }
      y = next;
    }
    return told.isEmpty() ? y - 4 : line(String.join("   ", told), y, Ink.INK) - 6;
  }
}
