package sawstead.intake;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/**
 * Whatever the bytes, a brief or a {@link BriefException} comes out. Rounds and seed can be set:
 * {@code -Dsawstead.fuzzRounds=20000 -Dsawstead.fuzzSeed=7}.
 */
class BriefFuzzTest {

  private static final int ROUNDS = Integer.getInteger("sawstead.fuzzRounds", 800);
  private static final long SEED = Long.getLong("sawstead.fuzzSeed", 20260105L);

  private static final List<String> ODD_VALUES =
      List.of(
          "",
          "nan",
          ".inf",
          "-1",
          "0",
          "3 km",
          "1e999",
          "unknown",
          "none",
          "34 35",
          "3/0",
          "a/../b",
          "ok",
          "5 ± 9",
          "x".repeat(200),
          "yes",
          "12,5",
          "\u0000",
          "0.0000001",
          "999999999999");

  @Test
  void read_ofRandomBytes_givesABriefOrABriefException() {
    Random random = new Random(SEED);
    String alphabet = "{}[]:-,&*!|>'\"%@`#\n\n  \tabc123.~?\\\u00e9";
    for (int round = 0; round < ROUNDS; round++) {
      byte[] bytes = new byte[random.nextInt(200)];
      random.nextBytes(bytes);
      if (round % 4 > 0) {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < bytes.length; i++) {
          text.append(alphabet.charAt(random.nextInt(alphabet.length())));
        }
        bytes = text.toString().getBytes(StandardCharsets.UTF_8);
      }
      assertDoor(bytes, round);
    }
  }

  @Test
  void read_ofBriefsWithChangedBytes_givesABriefOrABriefException() throws Exception {
    Random random = new Random(SEED + 1);
    List<Path> files = Briefs.good();
    for (int round = 0; round < ROUNDS; round++) {
      byte[] bytes = Files.readAllBytes(files.get(random.nextInt(files.size())));
      for (int change = 1 + random.nextInt(4); change > 0; change--) {
        bytes = changed(bytes, random);
      }
      assertDoor(bytes, round);
    }
  }

  private static byte[] changed(byte[] bytes, Random random) {
    int at = random.nextInt(bytes.length);
    switch (random.nextInt(4)) {
      case 0 -> bytes[at] = (byte) random.nextInt(128);
      case 1 -> bytes[at] = (byte) "{}[]:-,&*!|>'\"# \n".charAt(random.nextInt(17));
      case 2 -> {
        int end = Math.min(bytes.length, at + random.nextInt(40));
        byte[] shorter = Arrays.copyOf(bytes, bytes.length - (end - at));
        System.arraycopy(bytes, end, shorter, at, bytes.length - end);
        return shorter.length == 0 ? bytes : shorter;
      }
      default -> {
        int other = random.nextInt(bytes.length);
        byte swapped = bytes[at];
        bytes[at] = bytes[other];
        bytes[other] = swapped;
      }
    }
    return bytes;
  }

  @Test
  void read_ofBriefsWithChangedValues_givesABriefOrABriefException() {
    Random random = new Random(SEED + 2);
    List<Path> files = Briefs.good();
    JsonNodeFactory json = JsonNodeFactory.instance;
    for (int round = 0; round < ROUNDS; round++) {
      ObjectNode tree = Briefs.tree(files.get(random.nextInt(files.size())));
      for (int change = 1 + random.nextInt(5); change > 0; change--) {
        List<Leaves.Leaf> leaves = Leaves.of(tree);
        Leaves.Leaf leaf = leaves.get(random.nextInt(leaves.size()));
        Leaves.Leaf other = leaves.get(random.nextInt(leaves.size()));
        JsonNode value =
            switch (random.nextInt(6)) {
              case 0 -> json.nullNode();
              case 1 -> json.numberNode(random.nextInt(4000) - 1000);
              case 2 -> json.arrayNode().add(leaf.value());
              case 3 -> json.objectNode().set("odd", leaf.value());
              case 4 -> other.value();
              default -> json.textNode(ODD_VALUES.get(random.nextInt(ODD_VALUES.size())));
            };
        leaf.replace(value);
        if (random.nextInt(4) == 0 && other.parent() instanceof ObjectNode section) {
          section.remove((String) other.key());
        }
      }
      assertDoor(Briefs.bytes(tree), round);
    }
  }

  private static void assertDoor(byte[] bytes, int round) {
    try {
      BriefReader.read("fuzz", bytes);
    } catch (BriefException refused) {
      assertFalse(refused.problems().isEmpty());
      assertTrue(refused.problems().size() <= 100);
    } catch (RuntimeException | StackOverflowError other) {
      throw new AssertionError(
          "seed " + SEED + ", round " + round + ":\n" + new String(bytes, StandardCharsets.UTF_8),
          other);
    }
  }
}
