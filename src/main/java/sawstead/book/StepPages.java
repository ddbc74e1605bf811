package sawstead.book;

import java.io.IOException;
import java.util.List;
import sawstead.assembly.BenchStep;
import sawstead.assembly.BuildStep;
import sawstead.check.Report;
import sawstead.drawing.page.Booklet;
import sawstead.drawing.page.Ink;
import sawstead.drawing.page.Paper;
import sawstead.solid.Vec;

/** Two steps on a page, one under the other: the drawing on the left, the words on the right. */
final class StepPages {
  private static final double GAP = 14;
  private static final double FOOT = 14;

  /** Of the width, for the drawing. */
  private static final double SHARE = 0.56;

  /** Of the drawing's height, for what is put together before on a bench. */
  private static final double BENCH = 0.38;

  private final Booklet book;
  private final Scenes scenes;
  private final StepSentences sentences;

  StepPages(Booklet book, Report report) {
    this.book = book;
    scenes = new Scenes(report.station(), report.plan().steps());
    sentences = new StepSentences(report);
  }

  void draw(List<BuildStep> steps) throws IOException {
    int next = 0;
    while (next < steps.size()) {
      try (Paper paper = book.page()) {
        double top = paper.height() - Paper.MARGIN;
        double room = top - Paper.MARGIN - FOOT;
        double half = (room - GAP) / 2;
        boolean two =
            next + 1 < steps.size()
                && high(paper, steps.get(next)) <= half
                && high(paper, steps.get(next + 1)) <= half;
        if (two) {
          draw(paper, steps.get(next), top, half);
          double middle = top - half - GAP / 2;
          paper.line(Paper.MARGIN, middle, paper.width() - Paper.MARGIN, middle, 0.6, Ink.FAINT);
          draw(paper, steps.get(next + 1), top - half - GAP, half);
        } else {
          draw(paper, steps.get(next), top, Math.max(half, high(paper, steps.get(next))));
        }
        next += two ? 2 : 1;
        book.foot(paper);
      }
    }
  }

  private static double wide(Paper paper) {
    return paper.width() - 2 * Paper.MARGIN;
  }

  private double high(Paper paper, BuildStep step) throws IOException {
    return Sentence.height(sentences.of(step), paper, (1 - SHARE) * wide(paper) - GAP);
  }

  private void draw(Paper paper, BuildStep step, double top, double height) throws IOException {
    double width = SHARE * wide(paper);
    double x = Paper.MARGIN + width + GAP;
    Sentence.write(sentences.of(step), paper, x, top, (1 - SHARE) * wide(paper) - GAP);
    boolean bench = step.bench().size() > 1;
    double high = bench ? (1 - BENCH) * height : height;
    place(paper, step, new Picture.Frame(Paper.MARGIN, top - high, width, high));
    if (bench) {
      bench(paper, step, new Picture.Frame(Paper.MARGIN, top - height, width, height - high));
    }
  }

  private void place(Paper paper, BuildStep step, Picture.Frame frame) throws IOException {
    Vec middle = scenes.middle(step.places());
    Vec from = middle.plus(scenes.before(step));
    Picture picture =
        new Picture(
            Camera.seeing(step.direction()), scenes.coming(step), List.of(middle, from), frame);
    picture.draw(paper);
    if (step.number() > 1) {
      picture.arrow(paper, from, middle);
    }
  }

  private void bench(Paper paper, BuildStep step, Picture.Frame frame) throws IOException {
    Picture picture = new Picture(Camera.USUAL, scenes.bench(step), List.of(), frame);
    picture.draw(paper);
    for (BenchStep turn : step.bench()) {
      Vec centre = scenes.middle(turn.places());
      Vec by = scenes.apart(turn);
      picture.arrow(paper, centre.plus(by), centre.plus(by.scale(0.3)));
    }
    paper.text("on the bench", frame.x(), frame.y() + frame.height() - 8, 7.5, false, Ink.FAINT);
  }
}
