package sawstead.preview.look;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import javafx.scene.paint.Color;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Contrast by the formula of WCAG 2.1 (W3C Recommendation 2018), success criterion 1.4.3 (AA). */
class TokensTest {
  private static final double AA = 4.5;

  @ParameterizedTest
  @CsvSource({
    "ink, chalk", "ink, card", "ink, chalk-deep", "ink-soft, card", "ink-soft, chalk-deep",
    "cobalt, card", "vermilion, card", "ochre, card", "lichen, card", "tape-ink, tape",
    "ink-soft, chalk", "vermilion, chalk-deep", "ochre, chalk-deep"
  })
  void text_isReadable_lightAndDark(String text, String ground) {
    for (boolean dark : new boolean[] {false, true}) {
      Tokens look = Tokens.of(dark);
      double contrast = contrast(look.colour(text), look.colour(ground));
      assertTrue(contrast >= AA, text + " on " + ground + ", dark " + dark + ": " + contrast);
    }
  }

  @Test
  void contrast_ofBlackOnWhite_is21() {
    assertEquals(21, contrast(Color.BLACK, Color.WHITE), 1e-9);
  }

  @ParameterizedTest
  @ValueSource(strings = {"pink", ""})
  void colour_thatTheSheetDoesNotName_isRefused(String name) {
    assertThrows(IllegalArgumentException.class, () -> Tokens.of(true).colour(name));
  }

  private static double contrast(Color a, Color b) {
    double high = Math.max(luminance(a), luminance(b));
    double low = Math.min(luminance(a), luminance(b));
    return (high + 0.05) / (low + 0.05);
  }

  private static double luminance(Color c) {
    return 0.2126 * linear(c.getRed())
        + 0.7152 * linear(c.getGreen())
        + 0.0722 * linear(c.getBlue());
  }

  private static double linear(double channel) {
    return channel <= 0.03928 ? channel / 12.92 : Math.pow((channel + 0.055) / 1.055, 2.4);
  }
}
