package sawstead.layout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;

class MillimetresTest {
  @Test
  void parse_ofPlainNumbers_readsThem() {
    assertEquals(2440, Millimetres.parse("2440"));
    assertEquals(3.2, Millimetres.parse(" 3.2 mm "));
    assertEquals(0.5, Millimetres.parse(".5"));
  }

  @Test
  void parse_ofAnythingElse_fails() {
    for (String text :
        new String[] {
          "", "mm", "3,2", "1e3", "1E3", "NaN", "0x10", "12 in", "1 2", "9".repeat(50)
        }) {
      assertThrows(NumberFormatException.class, () -> Millimetres.parse(text), text);
    }
  }
}
