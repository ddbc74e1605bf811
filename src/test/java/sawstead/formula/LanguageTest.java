package sawstead.formula;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class LanguageTest {

  private static final Language LANGUAGE = Language.of(Set.of("width", "t"), Set.of("saw"));
  private static final Map<String, Object> VALUES =
      Map.of(
          "width", 400.0, "t", 18.0, "saw", Map.of("table", Map.of("depth", 560.0)), "inch", 25.4);

  /** Operators and their order as the CEL specification has them; values worked by hand. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "width - 2 * t | 364",
        "1 / 2 | 0.5",
        "-width / 3.2 + 7 | -118",
        "width > 300 ? 3 : 2 | 3",
        "3 / 4 * inch | 19.05",
        "saw.table.depth - 60 | 500",
        "min(width, 3, saw.table.depth) | 3",
        "max(t, 2, 90, 7) | 90",
        "floor(7.9) + ceil(7.1) + round(7.6) + abs(-1) | 24",
        "sqrt(3 * 3 + 4 * 4) | 5",
        "1000 * sin(30) | 500",
        "atan(1) | 45",
        "tan(45) + cos(60) | 1.5",
        "(width - 10) / (t + 2) | 19.5"
      })
  void number_ofAFormula_isWorkedByHand(String text, double expected) throws FormulaException {
    assertEquals(expected, LANGUAGE.formula(text).number(VALUES), 1e-9);
  }

  @Test
  void holds_ofAComparison_isTrueOrFalse() throws FormulaException {
    assertTrue(LANGUAGE.formula("width > 2 * t && !(t == 19)").holds(VALUES));
    assertFalse(LANGUAGE.formula("width < 2 || t > 100").holds(VALUES));
  }

  @Test
  void uses_areTheNamesInIt() throws FormulaException {
    assertEquals(Set.of("saw", "t"), LANGUAGE.formula("saw.table.depth + t + t").uses());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "width -",
        "widht",
        "width + 'a'",
        "1 +* 2",
        "width.size()",
        "((((((",
        "[1, 2].map(x, x * 2)[0]",
        "min(1)",
        "sin('a')",
        "import x",
        "width = 3",
        "true + 1"
      })
  void formula_thatIsNone_isRefusedInWords(String text) {
    FormulaException refused =
        assertThrows(FormulaException.class, () -> LANGUAGE.formula(text).number(VALUES));
    assertFalse(refused.getMessage().isBlank());
    assertFalse(refused.remedy().isBlank());
    assertFalse(refused.getMessage().contains("Exception"), refused.getMessage());
  }

  @Test
  void formula_withAWrongName_namesTheRightOnes() {
    FormulaException refused =
        assertThrows(FormulaException.class, () -> LANGUAGE.formula("widht - 1"));
    assertEquals("there is no name `widht` in `widht - 1`", refused.getMessage());
    assertEquals("use one of saw, t, width", refused.remedy());
  }

  @Test
  void number_whereAGroupLacksAName_saysWhich() throws FormulaException {
    Formula formula = LANGUAGE.formula("saw.tabel.depth");
    FormulaException refused = assertThrows(FormulaException.class, () -> formula.number(VALUES));
    assertTrue(refused.getMessage().contains("`tabel`"), refused.getMessage());
  }

  @ParameterizedTest
  @ValueSource(strings = {"1 / (t - t)", "sqrt(-1)", "1e308 * 10"})
  void number_thatIsNotFinite_isRefused(String text) throws FormulaException {
    Formula formula = LANGUAGE.formula(text);
    assertThrows(FormulaException.class, () -> formula.number(VALUES));
  }

  @Test
  void formula_ofAnyLength_isReadOrRefusedAtOnce() {
    assertThrows(FormulaException.class, () -> LANGUAGE.formula("1+".repeat(5000) + "1"));
    assertThrows(
        FormulaException.class, () -> LANGUAGE.formula("(".repeat(200) + "1" + ")".repeat(200)));
  }

  @Test
  void formula_ofRandomSigns_neverFailsOtherwise() {
    long seed = 20261125L;
    Random random = new Random(seed);
    String signs = "width t saw.()+-*/<>=!&|?:[]{}'\"0123456789,_ minax\\\n";
    for (int i = 0; i < 4000; i++) {
      StringBuilder text = new StringBuilder();
      int length = random.nextInt(30);
      for (int k = 0; k < length; k++) {
        text.append(signs.charAt(random.nextInt(signs.length())));
      }
      String sum = text.toString();
      try {
        assertTrue(Double.isFinite(LANGUAGE.formula(sum).number(VALUES)));
      } catch (FormulaException refused) {
        assertFalse(refused.getMessage().isBlank(), "seed " + seed + ": " + sum);
      }
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"in", "min", "Width", "a-b", "1a", "", "for", "inch"})
  void canName_ofAWordOfTheLanguage_isFalse(String word) {
    assertFalse(Language.canName(word));
  }
}
