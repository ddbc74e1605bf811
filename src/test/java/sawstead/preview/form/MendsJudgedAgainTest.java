package sawstead.preview.form;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import sawstead.check.Finding;
import sawstead.check.Retrial;
import sawstead.check.Severity;
import sawstead.intake.BriefEdit;
import sawstead.intake.BriefSchema;
import sawstead.intake.BriefSpans;
import sawstead.measure.Unit;
import sawstead.preview.bench.Bench;
import sawstead.preview.bench.Dial;
import sawstead.preview.bench.Mending;
import sawstead.preview.bench.Snapshot;
import sawstead.preview.bench.Trial;
import sawstead.preview.bench.Written;

/**
 * Briefs with flaws that nobody chose: values of a demo set to an end of their sliders. Each value
 * that is said to mend one is put to the whole program again.
 */
class MendsJudgedAgainTest {
  private static final String FILE = "models/some.yaml";
  private static final int BRIEFS = 6;
  private static final int DIALS = 5;

  private static List<Dial> dials(String text) {
    Map<String, BriefSpans.Span> spans = BriefSpans.of(text);
    List<Dial> dials = new ArrayList<>();
    for (Card card : Cards.of(BriefSchema.expanded(), spans.keySet(), Unit.MM)) {
      for (Card.Group group : card.groups()) {
        for (Field field : group.fields()) {
          Optional.ofNullable(spans.get(field.path()))
              .flatMap(BriefSpans.Span::value)
              .filter(v -> field.choices().isEmpty())
              .flatMap(v -> Range.dial(field, v, Unit.MM))
              .ifPresent(dials::add);
        }
      }
    }
    return dials;
  }

  private static String set(String text, String path, String value) {
    return BriefEdit.set(text, path, value).orElseThrow().in(text);
  }

  private static List<Finding> stops(Snapshot judged) {
    return judged.report().orElseThrow().findings().stream()
        .filter(f -> f.severity() == Severity.STOP)
        .toList();
  }

  @Test
  void whatIsSaidToMendIt_doesSoInTheWholeProgram() throws Exception {
    long seed = 61126;
    Random random = new Random(seed);
    String demo = Files.readString(Path.of("models/quay-shed.yaml"));
    List<Dial> all = dials(demo);
    int briefs = 0;
    int claims = 0;
    for (int k = 0; k < 60 && briefs < BRIEFS; k++) {
      Dial.Rule flaw = (Dial.Rule) all.get(random.nextInt(all.size()));
      double end = random.nextBoolean() ? flaw.low() : flaw.high();
      String text = set(demo, flaw.path(), flaw.text().apply(end));
      Snapshot judged = Bench.judge(Bench.design(FILE, text));
      if (judged.report().isEmpty() || stops(judged).isEmpty()) {
        continue;
      }
      briefs++;
      Finding finding = stops(judged).get(0);
      Mending mending = Mending.of(FILE, judged, finding).orElseThrow();
      Written written = new Written(text, finding.about());
      List<Dial> near = new ArrayList<>(dials(text));
      Collections.shuffle(near, random);
      near.sort(Comparator.comparing(d -> written.distance(d.path())));
      for (Dial dial : near.subList(0, DIALS)) {
        Trial trial = mending.by(dial, () -> true);
        if (trial.mends()) {
          claims++;
          String what = "seed " + seed + ": " + flaw.path() + " = " + end + ", " + trial;
          Snapshot again = Bench.judge(Bench.design(FILE, set(text, dial.path(), trial.value())));
          assertTrue(
              again.report().orElseThrow().findings().stream()
                  .noneMatch(f -> Retrial.isSame(finding, f)),
              what);
          assertEquals(List.of(), Retrial.newStops(stops(judged), stops(again)), what);
          assertEquals(trial.worth() == Trial.Worth.MENDS_ALL, stops(again).isEmpty(), what);
        }
      }
    }
    assertEquals(BRIEFS, briefs, "briefs with a flaw");
    assertTrue(claims >= 3, claims + " claims");
  }
}
