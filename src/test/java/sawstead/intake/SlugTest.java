package sawstead.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SlugTest {

  @ParameterizedTest
  @CsvSource({
    "Lantern Alley,lantern-alley",
    "Säge & Söhne,sage-sohne",
    "../../etc/passwd,etc-passwd",
    "  --A--  ,a",
    "C:\\temp,c-temp",
    "ﬁne ①,fine-1",
    "con,station-con"
  })
  void of_isSmallLettersDigitsAndHyphens(String name, String slug) {
    assertEquals(slug, Slug.of(name));
  }

  @Test
  void of_aNameWithoutLatinLetters_isANumberOfItsOwn() {
    assertTrue(Slug.of("木工").matches("station-[0-9a-f]{8}"));
    assertNotEquals(Slug.of("木工"), Slug.of("工木"));
  }

  @Test
  void of_anyText_isAFolderName() {
    long seed = 20260106L;
    Random random = new Random(seed);
    for (int round = 0; round < 5_000; round++) {
      StringBuilder name = new StringBuilder();
      for (int i = random.nextInt(80); i > 0; i--) {
        name.append(
            (char) (random.nextInt(3) > 0 ? 32 + random.nextInt(95) : random.nextInt(0xD800)));
      }
      String slug = Slug.of(name.toString());
      assertTrue(
          slug.matches("[a-z0-9]+(-[a-z0-9]+)*") && slug.length() <= 68,
          () -> "seed " + seed + ": " + slug);
    }
  }
}
