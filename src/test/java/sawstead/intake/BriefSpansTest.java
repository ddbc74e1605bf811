package sawstead.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.fail;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The form reads the text at every letter that is typed, so no text may make it fail. */
class BriefSpansTest {
  private static final String[] TYPED = {
    "{", "}", "[", "]", ":", "- ", "? ", "\n", "\t", "&a ", "*a", "<<: ", "!!str ", "|\n", ">\n",
    "---\n", "...\n", "'", "\"", "\0", "\ud83d", "\ufeff", "# ", "@", "\u2028", "{a: b}"
  };

  @Test
  void of_anAliasAndComments_knowsTheRest() {
    Map<String, BriefSpans.Span> spans = BriefSpans.of("a: &x 1 # one\nb: *x\nc: [*x, 2]\n");
    assertEquals("1", spans.get("a").value().orElseThrow());
    assertFalse(spans.containsKey("b"));
    assertEquals("2", spans.get("c[1]").value().orElseThrow());
  }

  @ParameterizedTest
  @ValueSource(strings = {"{a: b}: c\n", "x:\n  - {a: 1}}\n", "? [1, 2]\n: 3\n", "a: {[b]: 1}\n"})
  void of_aKeyThatIsNoWord_isEmpty(String text) {
    assertEquals(Map.of(), BriefSpans.of(text));
  }

  @ParameterizedTest
  @ValueSource(strings = {"[", "{a: ", "- "})
  void of_brackets20000Deep_isEmpty(String open) {
    assertEquals(Map.of(), BriefSpans.of(open.repeat(20_000) + "b"));
  }

  @Test
  void of_anyTextThatIsTyped_comesBack() throws Exception {
    long seed = 20_261_126;
    Random random = new Random(seed);
    String whole = Files.readString(Path.of("models/chandler-row.yaml"));
    for (int trial = 0; trial < 2000; trial++) {
      StringBuilder text = new StringBuilder(whole);
      for (int k = 0; k < 1 + trial % 3; k++) {
        int at = random.nextInt(text.length() + 1);
        int to = Math.min(text.length(), at + random.nextInt(2) * random.nextInt(12));
        text.replace(at, to, TYPED[random.nextInt(TYPED.length)]);
      }
      try {
        BriefSpans.of(text.toString());
      } catch (RuntimeException | StackOverflowError fault) {
        fail("seed " + seed + ", trial " + trial + ":\n" + text, fault);
      }
    }
  }
}
