package sawstead.walk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import sawstead.brief.Brief;
import sawstead.brief.FenceKind;
import sawstead.check.Inspector;
import sawstead.check.Report;
import sawstead.check.Severity;
import sawstead.intake.BriefReader;
import sawstead.station.unit.Units;
import sawstead.walk.Question.Kind;

class InterviewTest {

  private static Brief read(Interview interview) {
    try {
      return BriefReader.read("walk", interview.brief().getBytes(StandardCharsets.UTF_8));
    } catch (sawstead.intake.BriefException e) {
      throw new AssertionError(e.getMessage() + "\n" + interview.brief(), e);
    }
  }

  private static Interview taken(Interview interview, String text) {
    Outcome outcome = interview.answer(text);
    Question question = interview.next().orElseThrow();
    return assertInstanceOf(
            Outcome.Taken.class, outcome, () -> question.path() + " <- " + text + ": " + outcome)
        .interview();
  }

  /** Answers by path; everything else is unknown. */
  private static Interview scripted(Map<String, String> script) {
    Interview interview = Interview.begin();
    for (int k = 0; interview.next().isPresent(); k++) {
      String path = interview.next().get().path();
      interview = taken(interview, script.getOrDefault(path, "unknown"));
      assertTrue(k < 500, "it comes to an end");
    }
    return interview;
  }

  @Test
  void everythingUnknown_isABrief() {
    Brief brief = read(scripted(Map.of()));
    assertTrue(brief.saw().isPresent());
    assertTrue(brief.vac().isPresent());
  }

  @ParameterizedTest
  @ValueSource(strings = {"jobsite", "benchtop", "contractor"})
  void everythingUnknown_isABriefForEachKindOfSaw(String like) {
    Brief brief = read(scripted(Map.of("saw.like", like, "units", "inch")));
    FenceKind expected =
        switch (like) {
          case "jobsite" -> FenceKind.EXTENDING;
          case "benchtop" -> FenceKind.ONE_END;
          default -> FenceKind.SLIDING;
        };
    assertEquals(expected, brief.saw().orElseThrow().fence().kind());
  }

  @Test
  void measured_standsInTheBriefAsWritten() {
    Map<String, String> script = new HashMap<>();
    script.put("name", "Barn: north 'bay'");
    script.put("units", "inch");
    script.put("saw.table.width", "26-1/2");
    script.put("saw.table.depth", "22 in \u00b1 1/32");
    script.put("saw.slots", "1");
    script.put("saw.slots[0].at", "-5 1/2");
    script.put("saw.dust", "none");
    Interview interview = scripted(script);
    Brief brief = read(interview);
    assertEquals("Barn: north 'bay'", brief.name());
    // 25.4 mm to the inch, REF-NUM-01: 26.5 in and 5.5 in.
    assertEquals(673.1, brief.saw().orElseThrow().table().width().nominal(), 1e-9);
    assertEquals(-139.7, brief.saw().orElseThrow().slots().get(0).at().nominal(), 1e-9);
    assertEquals(0.79375, brief.saw().orElseThrow().table().depth().plus(), 1e-9);
    assertTrue(brief.saw().orElseThrow().dust().isEmpty());
    assertTrue(interview.brief().contains("# not measured: typical"), interview.brief());
  }

  @Test
  void slotOutsideTheTable_isRefusedAtOnce() {
    Interview interview = Interview.begin();
    Map<String, String> script =
        Map.of("saw.table.width", "600", "saw.blade.leftEdge", "280", "saw.slots", "1");
    while (!interview.next().orElseThrow().path().equals("saw.slots[0].at")) {
      String path = interview.next().get().path();
      interview = taken(interview, script.getOrDefault(path, "unknown"));
    }
    Outcome.Refused refused = assertInstanceOf(Outcome.Refused.class, interview.answer("-300 mm"));
    assertTrue(refused.what().contains("outside the table"), refused.what());
    assertInstanceOf(Outcome.Refused.class, interview.answer("3 apples"));
    assertInstanceOf(Outcome.Refused.class, interview.answer(""));
    taken(interview, "-200 mm");
  }

  @Test
  void order_isThatOfAWalkRoundTheSaw() {
    Interview interview = Interview.begin();
    List<Integer> stops = new ArrayList<>();
    while (interview.next().isPresent()) {
      stops.add(interview.next().get().stop().number());
      interview = taken(interview, "unknown");
    }
    assertEquals(stops.stream().sorted().toList(), stops);
  }

  @Test
  void back_asksTheSameAgain() {
    Interview interview = taken(taken(Interview.begin(), "Shed"), "mm");
    assertEquals("units", interview.back().next().orElseThrow().path());
  }

  /** Any legal answers make a brief that can be read, wherever one stops and goes on. */
  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 10, 18, 22, 27})
  void anyAnswers_makeABrief_alsoAfterStopping(long seed) {
    Random random = new Random(seed);
    Interview interview = Interview.begin();
    Interview stopping = Interview.begin();
    int asked = 0;
    while (interview.next().isPresent()) {
      Question question = interview.next().get();
      for (int tries = 0; ; tries++) {
        String text = tries > 4 ? "unknown" : any(question, random);
        Outcome outcome = interview.answer(text);
        if (outcome instanceof Outcome.Taken taken) {
          interview = taken.interview();
          stopping = Interview.resume(stopping.answers());
          stopping = taken(stopping, text);
          break;
        }
        assertTrue(
            tries < 20, "seed " + seed + ": " + question.path() + " takes nothing: " + outcome);
      }
      assertTrue(++asked < 900, "seed " + seed + " does not end");
    }
    read(interview);
    assertEquals(interview.brief(), stopping.brief(), "seed " + seed);
  }

  private static String any(Question question, Random random) {
    int dice = random.nextInt(10);
    if (dice == 0) {
      return "unknown";
    }
    if (dice == 1) {
      return "";
    }
    if (dice == 2) {
      return List.of("-1", "0", "1e9", "7/0", "x", "99999 mm", "'", "\u00bd")
          .get(random.nextInt(8));
    }
    return switch (question.kind()) {
      case GATE, CHOICE -> question.choices().get(random.nextInt(question.choices().size()));
      case COUNT -> Integer.toString(random.nextInt(4));
      case ROW -> random.nextInt(300) + ", " + random.nextInt(300) + " mm";
      case TEXT ->
          dice < 6 && !question.example().isEmpty() ? question.example() : "a" + random.nextInt(99);
      case MEASURE -> measure(question, random);
    };
  }

  private static String measure(Question question, Random random) {
    return switch (random.nextInt(4)) {
      case 0 -> question.example();
      case 1 -> random.nextInt(40) + "-" + (1 + 2 * random.nextInt(8)) + "/16 in";
      case 2 -> random.nextInt(900) + " mm";
      default -> random.nextInt(300) + " mm \u00b1 1";
    };
  }

  /**
   * A walk with a tape in fractions, a knife, a throat with a taper, an alignment, a room, a sled
   * and an insert: the brief that comes of it is designed and checked.
   */
  @Test
  void walkInFractions_isABriefThatCanBeChecked() {
    Map<String, String> script = new HashMap<>();
    script.put("name", "Ferry slip");
    script.put("units", "inch");
    script.put("saw.like", "jobsite");
    script.put("saw.table.width", "26-1/2");
    script.put("saw.table.depth", "22");
    script.put("saw.table.height", "13");
    script.put("saw.blade.leftEdge", "11");
    script.put("saw.blade.arbor", "11");
    script.put("saw.knife", "yes");
    script.put("saw.knife.kind", "riving");
    script.put("saw.knife.thickness", "3/32");
    script.put("saw.slots", "2");
    for (String slot : List.of("saw.slots[0]", "saw.slots[1]")) {
      script.put(slot + ".width", "3/4");
      script.put(slot + ".depth", "3/8");
    }
    script.put("saw.throat", "yes");
    script.put("saw.throat.shape", "tapered");
    script.put("saw.throat.taperAcross", "5/8");
    script.put("saw.throat.ledgeWidth", "5/16");
    script.put("alignment", "yes");
    script.put("alignment.front", "4-21/64 in");
    script.put("alignment.rear", "4-21/64 in");
    script.put("room", "yes");
    script.put("room.left", "96");
    script.put("room.rear", "12-1/2 ft");
    script.put("sleds", "yes");
    script.put("sleds[0].widest", "9-1/2");
    script.put("inserts", "1");
    script.put("feeds", "1");
    script.put("feeds[0].cut", "rip");
    script.put("feeds[0].length", "47-1/4");
    script.put("feeds[0].width", "11-13/16");
    Interview interview = scripted(script);
    Brief brief = read(interview);
    // 25.4 mm to the inch, REF-NUM-01: 3/32 in, 5/8 in and 12-1/2 ft.
    assertEquals(
        2.38125, brief.saw().orElseThrow().knife().orElseThrow().thickness().nominal(), 1e-9);
    assertEquals(3810, brief.room().orElseThrow().rear().orElseThrow().nominal(), 1e-9);
    assertEquals(1, brief.sleds().size());
    assertEquals(1, brief.inserts().size());
    assertEquals(1200.15, brief.feeds().orElseThrow().get(0).length().nominal(), 1e-9);
    Report report = Inspector.inspect(Units.station(brief));
    assertEquals(
        List.of(),
        report.findings().stream().filter(f -> f.severity() == Severity.STOP).toList(),
        "nothing forbids cutting");
    assertTrue(report.station().parts().containsKey("saw/knife"), "the knife is there");
    assertTrue(
        report.station().parts().keySet().stream().anyMatch(id -> id.startsWith("sled-1/")),
        "so is the sled: " + report.station().parts().keySet());
  }

  @Test
  void listOfWishes_isAskedByYesOrNo() {
    Question question = at(Map.of(), "sleds").next().orElseThrow();
    assertTrue(question.asks().startsWith("Do you want a crosscut sled?"), question.asks());
    assertEquals("none", question.offer());
    Interview none = taken(at(Map.of(), "sleds"), "no");
    assertEquals("inserts", none.next().orElseThrow().path());
    Interview one = taken(at(Map.of(), "sleds"), "yes");
    assertEquals("sleds[0].id", one.next().orElseThrow().path());
  }

  @Test
  void unknownWhereNothingCanStandIn_leavesTheThingOut_andSaysSo() {
    Interview interview = at(Map.of("alignment", "yes"), "alignment.front");
    Outcome.Taken taken = assertInstanceOf(Outcome.Taken.class, interview.answer("unknown"));
    assertEquals(
        List.of("then alignment is left out: nothing can stand in for tooth at the front"),
        taken.remarks());
    assertTrue(!taken.interview().brief().contains("alignment"), taken.interview().brief());
  }

  private static Interview at(Map<String, String> script, String path) {
    Interview interview = Interview.begin();
    while (!interview.next().orElseThrow().path().equals(path)) {
      String now = interview.next().get().path();
      interview = taken(interview, script.getOrDefault(now, "unknown"));
    }
    return interview;
  }

  @Test
  void kinds_areAllAsked() {
    Interview interview = Interview.begin();
    List<Kind> kinds = new ArrayList<>();
    Map<String, String> script =
        Map.of("saw.bolts", "yes", "saw.bolts.at", "1", "saw.bolts.at[0]", "10, 20");
    while (interview.next().isPresent()) {
      Question question = interview.next().get();
      kinds.add(question.kind());
      interview = taken(interview, script.getOrDefault(question.path(), "unknown"));
    }
    for (Kind kind : Kind.values()) {
      assertTrue(kinds.contains(kind), kind + " in " + kinds);
    }
  }
}
