package sawstead.drawing.dxf;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** REF-FIL-08 for the codes; what a caret and two percent signs begin is from memory. */
class DxfTextTest {
  @ParameterizedTest
  @CsvSource({
    "stand/top, R2000, stand/top",
    "R\u00fcck 18 \u00d7 90, R2000, R\u00fcck 18 \u00d7 90",
    "\u0141\u00f3, R2000, \\U+0141\u00f3",
    "\u0141\u00f3, R12, \\U+0141\u00f3",
    "\u0141\u00f3, R2013, \u0141\u00f3",
    "\ud83e\ude9a, R2000, \\U+FFFD",
    "\ud83e\ude9a, R2013, \ud83e\ude9a",
    "a^b, R2000, a^ b",
    "50%%d, R2000, 50% %d",
    "a\\U+0041, R2013, a\\U+005CU+0041",
    "'a\nb', R2000, a b",
    "'0\r\nEOF', R12, 0  EOF",
  })
  void of_oddWords_staysOneHarmlessLine(String words, DxfVersion version, String written) {
    assertEquals(written, DxfText.of(words, version));
  }
}
