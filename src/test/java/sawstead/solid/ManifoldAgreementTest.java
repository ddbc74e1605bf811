package sawstead.solid;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import sawstead.outside.KernelSolid;
import sawstead.outside.OutsideTool;

/**
 * An independent kernel, npm manifold-3d, measures several hundred random panels and pairs: their
 * meshes must be solids to it, and volumes, areas and overlaps must agree to 1e-6.
 */
class ManifoldAgreementTest {
  private static final double AGREEMENT = 1e-6;
  private static final int SOLIDS = 120;

  /** Overlaps below this, mm3, are compared as if they were this. */
  private static final double LEAST_VOLUME = 1;

  @TempDir Path folder;

  @ParameterizedTest
  @ValueSource(longs = {10_000, 20_000, 30_000, 40_000})
  void volumesAndOverlaps_agree(long first) throws IOException {
    List<Body> bodies = new ArrayList<>();
    long seed = first;
    int tooFine = 0;
    while (bodies.size() < SOLIDS) {
      RandomSolids random = new RandomSolids(seed++);
      Body body = random.body("seed " + (seed - 1), 60);
      // That kernel is entered in single precision: vertices must differ in it.
      if (isCoarse(body.solid().mesh())) {
        bodies.add(body);
      } else {
        tooFine++;
      }
    }
    assertTrue(tooFine < SOLIDS, tooFine + " panels were too fine for single precision");
    List<int[]> pairs = new ArrayList<>();
    for (int i = 0; i + 3 < bodies.size(); i++) {
      pairs.add(new int[] {i, i + 1});
      pairs.add(new int[] {i, i + 3});
    }
    compare(bodies, pairs);
  }

  private void compare(List<Body> bodies, List<int[]> pairs) throws IOException {
    Path file = folder.resolve("solids.json");
    new ObjectMapper().writeValue(file.toFile(), described(bodies, pairs));
    JsonNode answer = OutsideTool.node("overlap.mjs", file).json();
    for (int i = 0; i < bodies.size(); i++) {
      JsonNode theirs = answer.get("solids").get(i);
      Mesh mesh = bodies.get(i).solid().mesh();
      String at = bodies.get(i).id();
      assertEquals("NoError", theirs.get("status").asText(), at);
      double volume = bodies.get(i).volume();
      assertEquals(volume, theirs.get("volume").asDouble(), AGREEMENT * volume, at);
      assertEquals(mesh.area(), theirs.get("area").asDouble(), AGREEMENT * mesh.area(), at);
    }
    int met = 0;
    for (int i = 0; i < pairs.size(); i++) {
      Body a = bodies.get(pairs.get(i)[0]);
      Body b = bodies.get(pairs.get(i)[1]);
      double theirs = answer.get("pairs").get(i).get("volume").asDouble();
      double ours = Overlap.between(a, b).map(Overlap::volume).orElse(0.0);
      met += ours > LEAST_VOLUME ? 1 : 0;
      double allowed = AGREEMENT * Math.max(LEAST_VOLUME, theirs);
      assertEquals(theirs, ours, allowed, a.id() + " and " + b.id());
    }
    assertTrue(met > 40, "only " + met + " pairs overlap");
  }

  private static ObjectNode described(List<Body> bodies, List<int[]> pairs) {
    ObjectNode all = new ObjectMapper().createObjectNode();
    ArrayNode solids = all.putArray("solids");
    for (Body body : bodies) {
      KernelSolid.put(solids.addObject(), body);
    }
    ArrayNode listed = all.putArray("pairs");
    for (int[] pair : pairs) {
      listed.addArray().add(pair[0]).add(pair[1]);
    }
    return all;
  }

  private static boolean isCoarse(Mesh mesh) {
    Set<List<Float>> places = new HashSet<>();
    for (int v = 0; v < mesh.vertexCount(); v++) {
      if (!places.add(List.of((float) mesh.x(v), (float) mesh.y(v), (float) mesh.z(v)))) {
        return false;
      }
    }
    return true;
  }
}
