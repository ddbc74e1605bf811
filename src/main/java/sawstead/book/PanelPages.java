package sawstead.book;

import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import sawstead.check.Words;
import sawstead.drawing.page.Booklet;
import sawstead.drawing.page.Ink;
import sawstead.drawing.page.Paper;
import sawstead.measure.Unit;
import sawstead.solid.Panel;
import sawstead.station.Part;
import sawstead.station.Station;

/** Every panel once, those that are alike together, in two columns. */
final class PanelPages {
  private static final double GAP = 18;
  private static final double FOOT = 14;
  private static final double BETWEEN = 16;
  private static final double TALLEST = 150;

  private final Booklet book;
  private final Words words;
  private final Map<PanelCard, List<String>> cards = new LinkedHashMap<>();
  private Paper paper;
  private int column;
  private double y;

  PanelPages(Booklet book, Station station) {
    this.book = book;
    words = new Words(station.brief().units());
    for (Part part : station.parts().values()) {
      if (station.boards().containsKey(part.id()) && part.body().solid() instanceof Panel panel) {
        PanelCard card = PanelCard.of(station, part, panel);
        cards.computeIfAbsent(card, any -> new ArrayList<>()).add(part.id());
      }
    }
  }

  void draw() throws IOException {
    if (cards.isEmpty()) {
      return;
    }
    open();
    for (Map.Entry<PanelCard, List<String>> card : cards.entrySet()) {
      put(card.getKey(), card.getValue());
    }
    close();
  }

  private void open() throws IOException {
    paper = book.page();
    column = 0;
    y = top();
    String how =
        "Panels, each seen on its front, grain to the right. Measure along and up from the corner"
            + " with the dot"
            + (words.unit() == Unit.INCH ? ", inches" : ", mm")
            + "; dashed is on the back. Screws stand where they go through first.";
    Sentence.write(
        List.of(Sentence.of(how)),
        paper,
        Paper.MARGIN,
        paper.height() - Paper.MARGIN,
        paper.width() - 2 * Paper.MARGIN);
  }

  private double top() {
    return paper.height() - Paper.MARGIN - 30;
  }

  private void close() throws IOException {
    book.foot(paper);
    paper.close();
  }

  private double wide() {
    return (paper.width() - 2 * Paper.MARGIN - GAP) / 2;
  }

  private void put(PanelCard card, List<String> names) throws IOException {
    List<Sentence> above = new ArrayList<>();
    above.add(new Sentence(String.join(", ", names), 10, true, Ink.INK, 0));
    String times = names.size() > 1 ? names.size() + " alike, each " : "";
    above.add(new Sentence(times + card.size(words) + ", " + card.stock(), 8.5, false, Ink.INK, 1));
    List<Sentence> below =
        card.lines().stream().map(l -> new Sentence(l, 8, false, Ink.INK, 1)).toList();
    PanelView view = new PanelView(card, wide(), TALLEST);
    double high =
        Sentence.height(above, paper, wide())
            + view.height()
            + Sentence.height(below, paper, wide())
            + BETWEEN;
    if (y - high < Paper.MARGIN + FOOT && y < top()) {
      if (column == 0) {
        column = 1;
        y = top();
      } else {
        close();
        open();
      }
    }
    double x = Paper.MARGIN + column * (wide() + GAP);
    y = Sentence.write(above, paper, x, y, wide());
    y -= view.height();
    view.draw(paper, x, y);
    y = Sentence.write(below, paper, x, y, wide()) - BETWEEN;
  }
}
