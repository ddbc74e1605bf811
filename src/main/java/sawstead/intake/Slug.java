package sawstead.intake;

import java.nio.charset.StandardCharsets;
import java.text.Normalizer;
import java.util.Locale;
import java.util.zip.CRC32;

/** Turns the name of a station into the name of a folder that can be made everywhere. */
final class Slug {

  private static final int LONGEST = 60;

  private Slug() {}

  /**
   * Small letters a to z, digits and single hyphens, never empty: accents are dropped (NFKD), all
   * else becomes a hyphen. A name without any such letter gets a number of its own instead.
   */
  static String of(String name) {
    String plain =
        Normalizer.normalize(name, Normalizer.Form.NFKD)
            .replaceAll("\\p{M}+", "")
            .toLowerCase(Locale.ROOT)
            .replaceAll("[^a-z0-9]+", "-");
    String slug = trimmed(plain.substring(0, Math.min(LONGEST, plain.length())));
    if (slug.isEmpty()) {
      return "station-" + number(name);
    }
    return Duplicates.isDevice(slug) ? "station-" + slug : slug;
  }

  private static String trimmed(String slug) {
    return slug.replaceAll("^-+|-+$", "");
  }

  private static String number(String name) {
    CRC32 sum = new CRC32();
    sum.update(name.getBytes(StandardCharsets.UTF_8));
    return String.format(Locale.ROOT, "%08x", sum.getValue());
  }
}
