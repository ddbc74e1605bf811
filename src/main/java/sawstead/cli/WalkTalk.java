package sawstead.cli;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.PrintWriter;
import sawstead.walk.AnswerFile;
import sawstead.walk.Drawing;
import sawstead.walk.Drawings;
import sawstead.walk.Interview;
import sawstead.walk.Outcome;
import sawstead.walk.Question;

/** The interview on a terminal: a question with its drawing, a line for the answer. */
final class WalkTalk {
  private final PrintWriter out;
  private final Paint paint;
  private final AnswerFile kept;
  private int stop;

  WalkTalk(PrintWriter out, Paint paint, AnswerFile kept) {
    this.out = out;
    this.paint = paint;
    this.kept = kept;
  }

  /** Asks until everything is answered, or until the one who answers stops. */
  Interview ask(Interview from, BufferedReader lines) throws IOException {
    Interview interview = from;
    out.println("Unplug the saw. Answer with a length as you read it: 26-1/2, 3/4 in, 640 mm.");
    out.println("`unknown` is always an answer; `back` asks again; `stop` keeps what you said.");
    if (!from.answers().isEmpty()) {
      out.println("going on after " + from.answers().size() + " answers");
    }
    while (interview.next().isPresent()) {
      Question question = interview.next().get();
      print(question, interview.left());
      String line = lines.readLine();
      if (line == null || line.strip().equals("stop")) {
        out.println();
        return interview;
      }
      interview =
          line.strip().equals("back") ? interview.back() : answered(interview, line, question);
      kept.write(interview.answers());
    }
    return interview;
  }

  private Interview answered(Interview interview, String line, Question question) {
    Outcome outcome = interview.answer(line);
    if (outcome instanceof Outcome.Refused refused) {
      out.println("  " + paint.stop("no") + "  " + refused.what());
      out.println("      " + refused.remedy());
      return interview;
    }
    Outcome.Taken taken = (Outcome.Taken) outcome;
    taken.remarks().forEach(r -> out.println("  " + paint.faint(r)));
    return taken.interview();
  }

  private void print(Question question, int left) {
    out.println();
    if (question.stop().number() != stop) {
      stop = question.stop().number();
      out.println(
          paint.strong(
              question.stop().title() + "  (" + stop + " of " + question.stop().of() + ")"));
      out.println();
    }
    Drawings.of(question.path()).ifPresent(this::draw);
    out.println(paint.strong(question.title()) + paint.faint("   " + left + " left"));
    out.println("  " + question.means());
    if (!question.asks().isEmpty()) {
      out.println("  " + question.asks());
    }
    if (!question.choices().isEmpty()) {
      out.println("  one of: " + String.join(", ", question.choices()));
    }
    if (question.hasOffer()) {
      out.println("  enter alone: " + question.offer());
    }
    out.print("> ");
    out.flush();
  }

  private void draw(Drawing drawing) {
    TextDrawing.lines(drawing).forEach(line -> out.println("    " + line));
    out.println();
  }
}
