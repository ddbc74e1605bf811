package sawstead.preview.tape;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import sawstead.check.Passage;
import sawstead.check.Words;
import sawstead.measure.Unit;
import sawstead.preview.Display;
import sawstead.preview.scene.BuildOrder;
import sawstead.preview.scene.Demo;
import sawstead.solid.Vec;
import sawstead.station.Mover;
import sawstead.station.Station;

/** What is written on the tape of every motion of every demo, however wide the window is. */
class LetteringTest {
  private static final double SIGN = 7;
  private static final double NARROWEST = 120;
  private static final double WIDEST = 1700;
  private static final String LONG = "extras/a-shelf-for-the-tall-jars-of-glue-and-the-rest";

  @ParameterizedTest
  @ValueSource(
      strings = {
        "blade-till",
        "chandler-row",
        "cooperage",
        "first-brief",
        "granary-loft",
        "lantern-alley",
        "quay-shed"
      })
  void everyRunOfADemo_isLetteredApart_onTheTape(String demo) {
    Display.demand();
    Station station = Demo.station(demo);
    BuildOrder order = BuildOrder.of(station);
    for (Unit unit : Unit.values()) {
      Words words = new Words(unit);
      for (Run run : Run.all(station, order, Optional.empty())) {
        List<Run> all = new ArrayList<>(List.of(run));
        run.mover().ifPresent(m -> all.addAll(stopped(run, m, words)));
        all.forEach(r -> everyWidth(r, unit, words, order));
      }
    }
  }

  private static List<Run> stopped(Run run, Mover mover, Words words) {
    List<Run> stopped = new ArrayList<>();
    for (double share : new double[] {0, 0.03, 0.31, 0.5, 0.72, 0.98, 1}) {
      double at = run.from() + share * (run.to() - run.from());
      String says = "first contact with " + LONG + " after " + words.length(at);
      stopped.add(
          new Run(
              run.name(),
              Optional.of(mover),
              run.scale(),
              run.from(),
              run.to(),
              run.start(),
              Optional.of(contact(at)),
              says));
    }
    return stopped;
  }

  private static Passage.Contact contact(double at) {
    return new Passage.Contact(LONG, LONG, at, new Vec(0, 0, 0));
  }

  private static void everyWidth(Run run, Unit unit, Words words, BuildOrder order) {
    for (double width = NARROWEST; width < WIDEST; width *= 1.31) {
      for (double share : new double[] {0, 0.37, 1}) {
        double at = run.from() + share * (run.to() - run.from());
        String reads = run.reads(at, words, order);
        Lettering letters = Lettering.of(run, unit, width, at, reads, Tape::wide);
        String what = run.name() + " " + run.contact() + " on " + width + " at " + at + letters;
        List<Lettering.Word> above = new ArrayList<>(letters.above());
        double w = width;
        run.contact()
            .map(c -> Lettering.pixel(run, w, c.at()))
            .ifPresent(x -> above.add(new Lettering.Word("sign", x - SIGN, x + SIGN)));
        apart(above, width, what);
        apart(letters.numbers(), width, what);
        boolean all = run.contact().isEmpty() || width > 400;
        assertTrue(!all || !letters.above().isEmpty(), "what the thumb reads is told: " + what);
      }
    }
  }

  private static void apart(List<Lettering.Word> words, double width, String what) {
    for (Lettering.Word a : words) {
      assertTrue(a.from() >= 0 && a.to() <= width && !a.text().startsWith("."), a + ": " + what);
      for (Lettering.Word b : words) {
        assertTrue(a == b || a.to() <= b.from() || b.to() <= a.from(), a + " " + b + ": " + what);
      }
    }
  }

  @Test
  void aLongReading_isCutBetweenLetters_notWithinOne() {
    Display.demand();
    Run run =
        new Run("x", Optional.empty(), Run.Scale.STEPS, 0, 9, 0, Optional.empty(), "nine steps");
    String wide = "\ud83e\udeb5".repeat(200);
    for (double width = NARROWEST; width < 400; width++) {
      for (Lettering.Word word :
          Lettering.of(run, Unit.MM, width, 3, "step 3: " + wide, Tape::wide).above()) {
        String letters = word.text().replace("\ud83e\udeb5", "");
        assertTrue(letters.chars().noneMatch(c -> Character.isSurrogate((char) c)), word.text());
      }
    }
  }
}
