package sawstead.outside;

import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import sawstead.check.Inspector;
import sawstead.check.Passage;
import sawstead.check.Report;
import sawstead.intake.BriefException;
import sawstead.intake.BriefReader;
import sawstead.solid.Body;
import sawstead.solid.Box;
import sawstead.solid.Motion;
import sawstead.station.Situation;
import sawstead.station.Station;
import sawstead.station.unit.Units;

/**
 * Every motion of whole stations, demo, flawed and made up, against an independent kernel that
 * looks at each moving body and each thing on its way at many places: what is said to be clear
 * shares no more than a skin with anything at any of them, and what is said to be stopped is
 * stopped within the bracket that the looks leave.
 */
class StationsInAnIndependentKernelTest {
  private static final int LOOKS = 24;

  /** How far from where an independent look shares nothing ours may begin: its own finest step. */
  private static final double EARLY = 0.02;

  @TempDir Path folder;

  private record Pair(Passage passage, Body mover, Body obstacle) {}

  @ParameterizedTest
  @ValueSource(
      strings = {
        "lantern-alley",
        "cooperage",
        "flawed/rail-over-lid",
        "flawed/leaf-meets-wall",
        "flawed/guard-in-the-way"
      })
  void motions_ofAModel_areWhatAnIndependentKernelSees(String model) throws Exception {
    Path file = Path.of("models", model + ".yaml");
    assertAgree(Units.station(BriefReader.read(file.toString(), Files.readAllBytes(file))), 20);
  }

  /** A turn in place, then a slide from where it ended. */
  @Test
  void motions_ofAVacThatIsTipped_areWhatAnIndependentKernelSees() throws Exception {
    Path file = Path.of("src/test/resources/cases/exits/tipped-vac.yaml");
    Station station = Units.station(BriefReader.read(file.toString(), Files.readAllBytes(file)));
    assertTrue(
        Inspector.inspect(station).passages().stream()
            .anyMatch(p -> p.mover().id().equals("vac/body-comes-out-2")));
    assertAgree(station, 15);
  }

  /** Briefs that nobody wrote: measurements, wall and wishes from a seed. */
  @Test
  void motions_ofStationsMadeUp_areWhatAnIndependentKernelSees() throws Exception {
    for (long seed = 1; seed <= 4; seed++) {
      assertAgree(madeUp(new Random(seed)), 20);
    }
  }

  private static Station madeUp(Random random) throws BriefException {
    double depth = 440 + 150 * random.nextDouble();
    double left = 260 + 80 * random.nextDouble();
    String text =
        String.format(
            Locale.ROOT,
            """
            name: made up
            units: mm
            saw:
              table: {width: %.1f, depth: %.1f, height: %.1f}
              body: {left: %.1f, right: 270, front: 30, rear: %.1f}
              feet: {left: %.1f, right: 260, front: 45, rear: %.1f}
              bottom: closed
              blade: {leftEdge: %.1f, arbor: %.1f}
              slots: [{at: -%.1f, width: 19, depth: 9}, {at: 130, width: 19, depth: 9}]
              fence: {kind: one-end, right: 330, left: 200}
              dust: {side: rear, x: 0, below: 170, diameter: 45}
              tilt: {side: %s}
            stock: [{name: ply, length: 2440, width: 1220, thickness: %.2f}]
            vac: {width: 370, depth: 380, height: %.1f, hose: {cuff: 50}}
            casters: {height: %.1f}
            station: {workingHeight: %.1f}
            room: {left: %.1f, right: 1500, front: 2500, rear: %.1f}
            """,
            left + 330 + 40 * random.nextDouble(),
            depth,
            300 + 50 * random.nextDouble(),
            left - 30,
            depth - 30,
            left - 40,
            depth - 50,
            left,
            0.47 * depth,
            105 + 40 * random.nextDouble(),
            random.nextBoolean() ? "left" : "right",
            16 + 3 * random.nextDouble(),
            380 + 60 * random.nextDouble(),
            60 + 50 * random.nextDouble(),
            900 + 60 * random.nextDouble(),
            900 + 900 * random.nextDouble(),
            depth + 500 + 700 * random.nextDouble());
    return Units.station(BriefReader.read("made-up.yaml", text.getBytes()));
  }

  private void assertAgree(Station station, int least) throws IOException {
    List<Pair> pairs = new ArrayList<>();
    Report report = Inspector.inspect(station);
    for (Passage passage : report.passages()) {
      Situation situation = Situation.of(report.station(), passage.mover());
      for (Body moved : situation.moved()) {
        Box swept = swept(moved, passage.mover().motion());
        for (Body standing : situation.standing()) {
          if (swept.overlaps(standing.box(), 0)) {
            pairs.add(new Pair(passage, moved, standing));
          }
        }
      }
    }
    assertTrue(pairs.size() > least, "only " + pairs.size() + " pairs come near each other");
    JsonNode answers = look(pairs);
    Set<String> confirmed = new HashSet<>();
    for (int i = 0; i < pairs.size(); i++) {
      if (judge(pairs.get(i), answers.get(i))) {
        confirmed.add(pairs.get(i).passage().mover().id());
      }
    }
    for (Passage passage : report.passages()) {
      String id = passage.mover().id();
      assertTrue(passage.firstContact().isEmpty() || confirmed.contains(id), id + " is not met");
    }
  }

  /** Whether ours stops at this pair, and theirs with it. */
  private static boolean judge(Pair pair, JsonNode theirs) {
    Passage passage = pair.passage();
    double from = passage.mover().motion().from();
    String where =
        passage.mover().id()
            + ", "
            + pair.mover().id()
            + " and "
            + pair.obstacle().id()
            + ": "
            + theirs
            + ", ours "
            + passage.firstContact();
    if (!theirs.get("deep").isNull()) {
      assertTrue(passage.firstContact().isPresent(), "missed, " + where);
      double ours = Math.abs(passage.firstContact().get().at() - from);
      assertTrue(ours <= Math.abs(theirs.get("deep").asDouble() - from) + 1e-9, "late, " + where);
    }
    boolean its =
        passage
            .firstContact()
            .filter(
                c -> c.with().equals(pair.obstacle().id()) && c.mover().equals(pair.mover().id()))
            .isPresent();
    if (its) {
      assertTrue(!theirs.get("met").isNull(), "not met at all, " + where);
      double free = theirs.get("free").isNull() ? from : theirs.get("free").asDouble();
      double ours = Math.abs(passage.firstContact().get().at() - from);
      assertTrue(ours >= Math.abs(free - from) - EARLY, "early, " + where);
    }
    return its;
  }

  private static Box swept(Body moved, Motion motion) {
    Box swept = null;
    for (int i = 0; i <= LOOKS; i++) {
      double at = motion.from() + (motion.to() - motion.from()) * i / LOOKS;
      Box box = moved.moved(motion.at(at)).box();
      swept = swept == null ? box : swept.union(box);
    }
    return swept;
  }

  private JsonNode look(List<Pair> pairs) throws IOException {
    ObjectMapper mapper = new ObjectMapper();
    ObjectNode input = mapper.createObjectNode();
    input.put("looks", LOOKS);
    ArrayNode motions = input.putArray("motions");
    pairs.forEach(
        p ->
            KernelMotions.put(
                motions.addObject(), p.mover(), p.obstacle(), p.passage().mover().motion()));
    Path file = folder.resolve("stations.json");
    mapper.writeValue(file.toFile(), input);
    JsonNode answers = OutsideTool.node("motions.mjs", file).json().get("motions");
    Files.delete(file);
    return answers;
  }
}
