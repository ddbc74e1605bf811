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
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import sawstead.export.RandomPanels;
import sawstead.solid.Axis;
import sawstead.solid.Body;
import sawstead.solid.Motion;
import sawstead.solid.Placement;
import sawstead.solid.Slide;
import sawstead.solid.Sweep;
import sawstead.solid.Turn;
import sawstead.solid.Vec;

/**
 * Random slides and turns of random panels with grooves and holes past others, against an
 * independent kernel that is given meshes and motions and looks at many places on the way: a
 * contact that it finds is never missed, and ours begins within the bracket that its looks leave.
 */
class MotionsInAnIndependentKernelTest {
  private static final long SEED = 20_261_125;
  private static final int MOTIONS = 300;
  private static final int LOOKS = 24;

  /** How far from where an independent look shares nothing ours may begin: its own finest step. */
  private static final double EARLY = 0.02;

  @TempDir Path folder;

  private record Case(long seed, Body mover, Body obstacle, Motion motion) {}

  @Test
  void firstContact_isNeverMissedAndLiesInTheBracketOfManyLooks() throws IOException {
    List<Case> cases = cases();
    ObjectMapper mapper = new ObjectMapper();
    ObjectNode input = mapper.createObjectNode();
    input.put("looks", LOOKS);
    ArrayNode motions = input.putArray("motions");
    cases.forEach(c -> KernelMotions.put(motions.addObject(), c.mover(), c.obstacle(), c.motion()));
    Path file = folder.resolve("motions.json");
    mapper.writeValue(file.toFile(), input);
    JsonNode answer = OutsideTool.node("motions.mjs", file).json().get("motions");
    Files.delete(file);
    int deep = 0;
    int clear = 0;
    int gaps = 0;
    for (int i = 0; i < cases.size(); i++) {
      Case c = cases.get(i);
      JsonNode theirs = answer.get(i);
      Sweep ours = Sweep.of(c.motion(), List.of(c.mover()), List.of(c.obstacle()), Set.of(), 0.05);
      String where = "seed " + c.seed() + " " + c.motion() + ": " + theirs + ", ours " + ours;
      if (!theirs.get("deep").isNull()) {
        deep++;
        assertTrue(ours.firstContact().isPresent(), "missed, " + where);
        double at = progress(c, ours.firstContact().get().at());
        assertTrue(at <= progress(c, theirs.get("deep").asDouble()) + 1e-9, "late, " + where);
      }
      if (ours.firstContact().isPresent() && !theirs.get("met").isNull()) {
        double at = progress(c, ours.firstContact().get().at());
        boolean fromStart = theirs.get("free").isNull();
        double free = fromStart ? 0 : progress(c, theirs.get("free").asDouble());
        assertTrue(at >= free - EARLY, "early, " + where);
      }
      if (theirs.get("met").isNull()) {
        clear++;
      }
      if (!theirs.get("gap").isNull()) {
        gaps++;
        double gap = theirs.get("gap").asDouble();
        double least = ours.leastClearance().getAsDouble();
        assertTrue(least <= gap + Sweep.CLEARANCE_ERROR + 1e-3, "gap, " + where);
      }
    }
    String counts = deep + " deep, " + clear + " clear, " + gaps + " gaps";
    assertTrue(deep > MOTIONS / 4 && clear > MOTIONS / 8 && gaps > MOTIONS / 30, counts);
  }

  /** From the first parameter on, whichever way it goes. */
  private static double progress(Case c, double parameter) {
    return Math.abs(parameter - c.motion().from());
  }

  private static List<Case> cases() {
    List<Case> cases = new ArrayList<>();
    List<RandomPanels.Sample> panels = RandomPanels.from(SEED, 2 * MOTIONS).toList();
    for (int i = 0; i < MOTIONS; i++) {
      long seed = panels.get(2 * i).seed();
      Random random = new Random(seed);
      Body mover = body("mover", panels.get(2 * i), random, Vec.ZERO);
      Vec away =
          new Vec(
              between(random, -900, 900), between(random, -900, 900), between(random, -500, 500));
      Body obstacle = body("obstacle", panels.get(2 * i + 1), random, away);
      cases.add(new Case(seed, mover, obstacle, motion(random, away)));
    }
    return cases;
  }

  /** Aimed at the obstacle, more or less, so that many meet it and many pass. */
  private static Motion motion(Random random, Vec away) {
    Vec off = new Vec(between(random, -1, 1), between(random, -1, 1), between(random, -1, 1));
    double rest = random.nextBoolean() ? 0 : between(random, -20, 20);
    if (random.nextBoolean()) {
      double way = between(random, 300, 1800);
      return new Slide(away.plus(off.scale(300)), rest, rest + way, rest);
    }
    double degrees = between(random, 30, 170) * (random.nextBoolean() ? 1 : -1);
    Vec axis = random.nextInt(3) == 0 ? Axis.Y.unit() : off;
    return new Turn(off.scale(400), axis, rest, rest + degrees, rest);
  }

  private static Body body(String id, RandomPanels.Sample sample, Random random, Vec at) {
    Placement turned =
        Placement.at(sample.panel().box().centre().scale(-1))
            .turned(Axis.X, random.nextInt(4) * 90)
            .turned(Axis.Z, random.nextInt(3) == 0 ? 90 : 360 * random.nextDouble())
            .turned(Axis.Y, random.nextInt(3) == 0 ? 0 : 360 * random.nextDouble());
    return new Body(id, sample.panel(), turned.moved(at));
  }

  private static double between(Random random, double low, double high) {
    return low + (high - low) * random.nextDouble();
  }
}
