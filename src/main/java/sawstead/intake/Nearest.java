package sawstead.intake;

import java.util.Collection;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;
import org.apache.commons.text.similarity.JaroWinklerSimilarity;
import org.apache.commons.text.similarity.LevenshteinDistance;

/** Finds the known word that was probably meant. */
final class Nearest {

  private static final LevenshteinDistance SLIPS = new LevenshteinDistance(4);
  private static final JaroWinklerSimilarity LIKENESS = new JaroWinklerSimilarity();
  private static final double LIKELY = 0.85;

  private Nearest() {}

  /**
   * The nearest of the known words: at most one slip of the finger for three letters, or much the
   * same beginning ({@code thick} for {@code thickness}). Heuristic: it may find none, or a wrong
   * one.
   */
  static Optional<String> to(String word, Collection<String> known) {
    return known.stream()
        .filter(candidate -> isLikely(word, candidate))
        .max(
            Comparator.comparingDouble((String candidate) -> likeness(word, candidate))
                .thenComparing(Comparator.reverseOrder()));
  }

  private static boolean isLikely(String word, String candidate) {
    int slips = SLIPS.apply(bare(word), bare(candidate));
    boolean few = slips >= 0 && slips <= Math.max(1, candidate.length() / 3);
    return few || likeness(word, candidate) >= LIKELY;
  }

  private static double likeness(String word, String candidate) {
    return LIKENESS.apply(bare(word), bare(candidate));
  }

  /** Without case and hyphens, so that {@code table_width} finds {@code tableWidth}. */
  private static String bare(String word) {
    return word.toLowerCase(Locale.ROOT).replaceAll("[-_ ]", "");
  }
}
