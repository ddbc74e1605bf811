package sawstead.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

/** Letters that are two chars wide, wherever they lie: a reader's buffer may end inside one. */
class WideLettersTest {
  private static final String WIDE = "\ud83e\udeb5";
  private static final int FROM = 900;
  private static final int TO = 4200;

  private static String padded(int length) {
    return "#".repeat(79).concat("\n").repeat(length / 80 + 1).substring(0, length - 1) + "\n";
  }

  @Test
  void inAComment_theSpansAreFound_andTheTextIsRead() throws Exception {
    for (int at = FROM; at < TO; at++) {
      String text = padded(at) + "# " + WIDE + " oak\nname: shed\nunits: mm\n";
      assertEquals("shed", BriefSpans.of(text).get("name").value().orElseThrow(), "at " + at);
      assertEquals(3, YamlTree.read(text).size(), "at " + at);
    }
  }

  @Test
  void inAValue_itIsReadWhole_andTheNextSpanIsInItsPlace() throws Exception {
    for (int at = FROM; at < TO; at++) {
      String text = padded(at) + "name: \"a" + WIDE + "b\"\nunits: mm\n";
      var spans = BriefSpans.of(text);
      assertEquals("a" + WIDE + "b", spans.get("name").value().orElseThrow(), "at " + at);
      BriefSpans.Span units = spans.get("units");
      assertEquals("mm", text.substring(units.from(), units.to()), "at " + at);
      assertEquals(3, YamlTree.read(text).size(), "at " + at);
    }
  }
}
