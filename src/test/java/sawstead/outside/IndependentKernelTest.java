package sawstead.outside;

import static org.junit.jupiter.api.Assertions.assertEquals;
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
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import sawstead.export.RandomPanels;
import sawstead.solid.Axis;
import sawstead.solid.Body;
import sawstead.solid.Overlap;
import sawstead.solid.Panel;
import sawstead.solid.Placement;
import sawstead.solid.Vec;

/**
 * Volumes, closedness and overlaps of random panels against an independent kernel that is given our
 * meshes and placements and nothing else.
 */
class IndependentKernelTest {
  private static final long SEED = 20_260_303;
  private static final int PANELS = 300;
  private static final double RELATIVE = 1e-8;

  @TempDir Path folder;

  @Test
  void panelsAndPairs_measureTheSameInAnIndependentKernel() throws IOException {
    List<Body> bodies = bodies();
    ObjectMapper mapper = new ObjectMapper();
    ObjectNode input = mapper.createObjectNode();
    ArrayNode solids = input.putArray("solids");
    bodies.forEach(body -> KernelSolid.put(solids.addObject(), body));
    ArrayNode pairs = input.putArray("pairs");
    for (int i = 0; i + 1 < bodies.size(); i += 2) {
      pairs.addArray().add(i).add(i + 1);
    }
    Path file = folder.resolve("bodies.json");
    mapper.writeValue(file.toFile(), input);
    JsonNode answer = OutsideTool.node("overlap.mjs", file).json();
    Files.delete(file);

    for (int i = 0; i < bodies.size(); i++) {
      String where = "seed " + (SEED + i);
      JsonNode solid = answer.get("solids").get(i);
      assertEquals("NoError", solid.get("status").asText(), where);
      double volume = solid.get("volume").asDouble();
      assertEquals(bodies.get(i).volume(), volume, RELATIVE * volume, where);
    }
    int clashes = 0;
    for (JsonNode pair : answer.get("pairs")) {
      Body a = bodies.get(pair.get("a").asInt());
      Body b = bodies.get(pair.get("b").asInt());
      double theirs = pair.get("volume").asDouble();
      double ours = Overlap.between(a, b).map(Overlap::volume).orElse(0.0);
      assertEquals(theirs, ours, RELATIVE * Math.max(1, theirs), a.id() + " and " + b.id());
      clashes += theirs > 0 ? 1 : 0;
    }
    assertTrue(clashes > PANELS / 4, clashes + " pairs overlap: too few to tell anything");
  }

  /** Panels at odd angles, each second one through the middle of the one before it. */
  private static List<Body> bodies() {
    List<Body> bodies = new ArrayList<>();
    RandomPanels.from(SEED, PANELS)
        .forEach(
            sample -> {
              Panel panel = sample.panel();
              Random random = new Random(sample.seed());
              Placement turned =
                  Placement.at(panel.box().centre().scale(-1))
                      .turned(Axis.X, random.nextInt(4) * 90)
                      .turned(Axis.Z, random.nextInt(3) == 0 ? 90 : 360 * random.nextDouble())
                      .turned(Axis.Y, random.nextInt(3) == 0 ? 0 : 360 * random.nextDouble());
              Vec shift =
                  new Vec(random.nextInt(200), random.nextInt(100), 10 * random.nextDouble());
              bodies.add(new Body("seed-" + sample.seed(), panel, turned.moved(shift)));
            });
    return bodies;
  }
}
