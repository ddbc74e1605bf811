package sawstead.layout.sheet;

import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import sawstead.drawing.page.Booklet;
import sawstead.drawing.page.Ink;
import sawstead.drawing.page.Paper;
import sawstead.layout.Choice;
import sawstead.layout.CutPlan;
import sawstead.layout.SheetPlan;
import sawstead.layout.Tool;
import sawstead.layout.shop.Breakdown;
import sawstead.layout.shop.BreakdownText;
import sawstead.layout.shop.CostList;
import sawstead.layout.shop.CutPiece;
import sawstead.layout.shop.ShopStep;

/**
 * The first pages: the whole job at a glance, then every setting of the table saw in the order in
 * which it is used, with the cuts of all sheets that are made at it.
 */
final class JobPage {
  private static final double SIZE = 9;
  private static final double PITCH = 12.5;

  private final Booklet book;
  private final Breakdown breakdown;
  private final StepWords words;
  private Paper paper;
  private double y;

  JobPage(Booklet book, Breakdown breakdown) {
    this.book = book;
    this.breakdown = breakdown;
    this.words = new StepWords(breakdown);
  }

  void draw() throws IOException {
    open();
    title();
    order();
    sheets();
    settings();
    close();
  }

  private void open() throws IOException {
    paper = book.page();
    y = paper.height() - Paper.MARGIN - 16;
  }

  private void close() throws IOException {
    book.foot(paper);
    paper.close();
  }

  private void room(double points) throws IOException {
    if (y - points < Paper.MARGIN + 12) {
      close();
      open();
    }
  }

  private void line(String text, boolean heavy, Ink ink) throws IOException {
    for (String part : wrapped(text, heavy)) {
      room(PITCH);
      paper.text(part, Paper.MARGIN, y, SIZE, heavy, ink);
      y -= PITCH;
    }
  }

  private List<String> wrapped(String text, boolean heavy) throws IOException {
    return paper.face(heavy).lines(text, SIZE, paper.width() - 2 * Paper.MARGIN);
  }

  private void heading(String text) throws IOException {
    room(3 * PITCH);
    y -= 8;
    paper.text(text, Paper.MARGIN, y, 12, true, Ink.INK);
    paper.line(Paper.MARGIN, y - 4, paper.width() - Paper.MARGIN, y - 4, 0.8, Ink.INK);
    y -= PITCH + 5;
  }

  private void title() throws IOException {
    String name = breakdown.station().brief().name();
    double room = paper.width() - 2 * Paper.MARGIN;
    paper.text(
        paper.face(true).within("Cut: " + name, 20, room), Paper.MARGIN, y, 20, true, Ink.INK);
    y -= 20;
    if (breakdown.forbidden()) {
      line(
          "STOP: do not cut. The station has findings that forbid it: run check first.",
          true,
          Ink.VERMILION);
    }
    line(BreakdownText.verdict(breakdown), false, Ink.INK);
    line("Sheets cost " + CostList.words(CostList.of(breakdown)) + ".", false, Ink.INK);
    for (Choice choice : breakdown.plan().choices()) {
      String words =
          choice.words(
              offcut ->
                  breakdown.words().length(offcut.length())
                      + " x "
                      + breakdown.words().length(offcut.width()));
      boolean own = choice == breakdown.plan().choices().get(0);
      line((own ? "This plan, " : "Or ") + words + ".", false, own ? Ink.INK : Ink.FAINT);
    }
    for (String caution : breakdown.plan().cautions()) {
      line("Mind: " + caution, true, Ink.VERMILION);
    }
  }

  private void order() throws IOException {
    heading("Before the first cut");
    for (String rule :
        List.of(
            "Unplug the saw to set blade and fence. Blade square to table and parallel to slot and"
                + " fence. Glasses, ears, mask; vac on.",
            "Guard and riving knife stay on for every cut here. Hands 150 mm from the blade: push"
                + " block for anything narrower.",
            "Make one test cut in scrap at the first setting and measure it. Kerfs planned: guided "
                + words.both(breakdown.request().kerfs().guided())
                + ", table "
                + words.both(breakdown.request().kerfs().table())
                + ".",
            "Good side down under the guided saw, up at the table saw: splinters are where the teeth"
                + " come out. Each cut says which face of its panels that is; where it says none, both are"
                + " good.",
            "Order: guided saw first, sheet by sheet (sheet pages). Then the table saw, setting by"
                + " setting, as listed below: each setting once for the pieces of all sheets, and"
                + " never back to it by eye.")) {
      line("-  " + rule, false, Ink.INK);
    }
  }

  private void sheets() throws IOException {
    heading("Sheets");
    CutPlan plan = breakdown.plan();
    for (int i = 0; i < plan.sheets().size(); i++) {
      SheetPlan sheet = plan.sheets().get(i);
      long guided =
          breakdown.steps(i + 1).stream()
              .filter(s -> s.cut().guide().tool() == Tool.GUIDED)
              .count();
      long sellers = breakdown.steps(i + 1).stream().filter(ShopStep::isSellers).count();
      line(
          "Sheet "
              + (i + 1)
              + ":  "
              + sheet.stock()
              + ", "
              + breakdown.words().length(sheet.length())
              + " x "
              + breakdown.words().length(sheet.width())
              + ";  "
              + BreakdownText.count(sheet.pieces().size(), "panel", "panels")
              + ";  "
              + (sellers == 0
                  ? ""
                  : BreakdownText.count((int) sellers, "cut", "cuts") + " at the seller's, ")
              + BreakdownText.count((int) guided, "guided cut", "guided cuts")
              + ", "
              + (sheet.cuts().size() - guided - sellers)
              + " at the table saw",
          false,
          Ink.INK);
    }
  }

  /** From the first cut at the table saw on; a cut along the rail in between sets nothing. */
  private void settings() throws IOException {
    heading("Table saw, setting by setting");
    int number = 0;
    List<ShopStep> group = new ArrayList<>();
    for (CutRow row : CutRow.of(breakdown, words)) {
      if (row instanceof CutRow.OfCut cut) {
        group.add(cut.step());
        continue;
      }
      setting(number, group);
      group.clear();
      number = row instanceof CutRow.OfSetting setting ? setting.number() : number;
    }
    setting(number, group);
  }

  /**
   * Cuts at one setting.
   *
   * @param number of the setting that fence and stop are at, 0 before the first
   */
  private void setting(int number, List<ShopStep> group) throws IOException {
    if (group.isEmpty() || number == 0) {
      return;
    }
    ShopStep first = group.get(0);
    room(3 * PITCH);
    String name = words.setting(first);
    paper.edge(Paper.MARGIN + 1, y - 1, 7, 7, 0.7, 0, Ink.INK);
    if (!first.isMarked()) {
      paper.text(number + ".", Paper.MARGIN + 14, y, SIZE, true, GuideInk.of(first.cut().guide()));
    }
    double x = paper.text(name, Paper.MARGIN + 32, y, SIZE, true, GuideInk.of(first.cut().guide()));
    Map<Integer, List<ShopStep>> bySheet = new LinkedHashMap<>();
    group.forEach(s -> bySheet.computeIfAbsent(s.sheet(), k -> new ArrayList<>()).add(s));
    x = Math.max(x + 14, Paper.MARGIN + 215);
    for (Map.Entry<Integer, List<ShopStep>> sheet : bySheet.entrySet()) {
      double needs = 40 + sheet.getValue().size() * 14.0;
      if (x + needs > paper.width() - Paper.MARGIN && x > Paper.MARGIN + 216) {
        y -= PITCH + 1;
        room(PITCH);
        x = Paper.MARGIN + 215;
      }
      x = paper.text("sheet " + sheet.getKey(), x, y, SIZE - 1.5, false, Ink.FAINT) + 8;
      for (ShopStep step : sheet.getValue()) {
        if (x > paper.width() - Paper.MARGIN - 6) {
          y -= PITCH + 1;
          x = Paper.MARGIN + 223;
        }
        Tag.draw(paper, step.cut().guide(), step.cut().order(), x, y + 2.6);
        x += 14;
      }
      x += 6;
    }
    y -= PITCH;
    List<String> panels = new ArrayList<>();
    for (ShopStep step : group) {
      for (CutPiece piece : List.of(step.measured(), step.other())) {
        if (piece.kind() == CutPiece.Kind.PART) {
          panels.add(piece.name());
        }
      }
    }
    if (!panels.isEmpty()) {
      String all = "frees " + String.join(", ", panels);
      for (String part : wrapped(all, false)) {
        room(PITCH);
        paper.text(part, Paper.MARGIN + 32, y, 7.4, false, Ink.FAINT);
        y -= PITCH - 2.5;
      }
    }
    y -= 3;
  }
}
