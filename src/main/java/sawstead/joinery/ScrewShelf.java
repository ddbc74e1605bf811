package sawstead.joinery;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;

/**
 * The screws at hand.
 *
 * @param screws in any order
 */
public record ScrewShelf(List<Screw> screws) {
  /** Wood left between a tip and the far face, mm (REF-TRD-07, common practice, no source). */
  public static final double TIP_COVER = 3;

  /** Least thread in the second piece for a screw that carries, in diameters (REF-FAS-13). */
  public static final double FULL_HOLD = 6;

  /**
   * Least thread in a second piece that is too thin for {@link #FULL_HOLD}, in diameters: enough to
   * clamp until the glue has set (common practice, no source).
   */
  static final double CLAMPING_HOLD = 2;

  /** Greatest number into the edge of plywood (common practice, no source). */
  static final int THICKEST_IN_EDGE = 8;

  /** Greatest number of a hinge screw: a larger head does not sit in a narrow leaf. */
  private static final int THICKEST_IN_HINGE = 6;

  /** Copies the list. */
  public ScrewShelf {
    screws = List.copyOf(screws);
  }

  /** A shelf with these screws. */
  public static ScrewShelf of(Screw... screws) {
    return new ScrewShelf(List.of(screws));
  }

  /**
   * The best wood screw through one piece into another. Its tip stays {@link #TIP_COVER} short of
   * the far face. If any holds {@link #FULL_HOLD} diameters, the one that comes nearest to two
   * thirds of its length in the second piece (REF-TRD-07); if the second piece is too thin for
   * that, the longest. Of several, the number nearest to 8.
   *
   * @param through thickness of the first piece, mm
   * @param into wood of the second piece in line with the screw, mm
   * @param edge true if it goes into the edge of plywood: then at most number 8
   */
  public Optional<Screw> choose(double through, double into, boolean edge) {
    Predicate<Screw> fits =
        s ->
            hold(s, through) >= CLAMPING_HOLD
                && through + into - s.length() >= TIP_COVER - Board.SAME
                && (!edge || s.gauge().number() <= THICKEST_IN_EDGE);
    Comparator<Screw> nearest =
        Comparator.comparingDouble((Screw s) -> Math.abs(s.length() - 3 * through))
            .thenComparingInt(s -> Math.abs(s.gauge().number() - THICKEST_IN_EDGE));
    Optional<Screw> full =
        wood().filter(fits).filter(s -> hold(s, through) >= FULL_HOLD).min(nearest);
    return full.isPresent()
        ? full
        : wood()
            .filter(fits)
            .min(Comparator.comparingDouble((Screw s) -> -s.length()).thenComparing(nearest));
  }

  /**
   * The thickest hinge screw, number 4 to 6, whose tip stays {@link #TIP_COVER} short of the far
   * face; the longest up to 16 mm if there are several.
   *
   * @param leaf thickness of the leaf, mm
   * @param into wood behind it, mm
   */
  public Optional<Screw> hingeScrew(double leaf, double into) {
    return wood()
        .filter(s -> s.gauge().number() <= THICKEST_IN_HINGE && s.length() <= 20)
        .filter(s -> leaf + into - s.length() >= TIP_COVER - Board.SAME)
        .min(
            Comparator.comparingDouble((Screw s) -> Math.abs(s.length() - 16))
                .thenComparingInt(s -> -s.gauge().number()));
  }

  /** All pocket screws. */
  Stream<Screw> pocketScrews() {
    return screws.stream().filter(Screw::pocket);
  }

  /** Thread in the second piece, in diameters, tip counted. */
  static double hold(Screw screw, double through) {
    return (screw.length() - through) / screw.gauge().shank();
  }

  private Stream<Screw> wood() {
    return screws.stream().filter(s -> !s.pocket());
  }
}
