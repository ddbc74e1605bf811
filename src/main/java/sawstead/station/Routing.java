package sawstead.station;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sawstead.brief.MiterSlot;
import sawstead.brief.Router;
import sawstead.joinery.Board;
import sawstead.measure.LengthFormat;
import sawstead.measure.Unit;
import sawstead.solid.Box;
import sawstead.solid.Feature;
import sawstead.solid.Recess;
import sawstead.solid.Vec;

/**
 * How one relief groove in one panel is routed: with which bit, in how many passes, and where the
 * guide is clamped. All lengths mm.
 *
 * <p>A guide lies on the panel square to its front edge, and the router's base runs along it, so it
 * is half the base from the middle of the bit. For the left wall the router is pushed away from the
 * person with the guide on its left, for the right wall with the guide on its right and drawn back:
 * so the bit pulls toward the guide both times (common practice, no source).
 *
 * @param panel id
 * @param slot number of the miter slot from the left, from 1
 * @param left x of the groove's left wall, station frame
 * @param right x of its right wall
 * @param front y where it begins
 * @param rear y where it ends
 * @param depth below the panel's top
 * @param bit diameter of the bit
 * @param passes depth of the bit below the panel's top in each pass, in order
 * @param guides where the guide is set, in order
 */
public record Routing(
    String panel,
    int slot,
    double left,
    double right,
    double front,
    double rear,
    double depth,
    double bit,
    List<Double> passes,
    List<Guide> guides) {

  /** Deepest pass with a thin and with a thick shank (common practice, no source). */
  private static final double THIN_PASS = 3;

  private static final double THICK_PASS = 6;

  /** A shank from here on is thick: between 8 and 12 mm. */
  private static final double THICK = 10;

  /** The last pass takes little, so that the floor comes out clean (common practice, no source). */
  private static final double LAST = 0.6;

  /** A lane overlaps the one before by this share of the bit at least. */
  private static final double OVERLAP = 0.2;

  /** Rounding of coordinates, mm. */
  private static final double SAME = 1e-6;

  public Routing {
    passes = List.copyOf(passes);
    guides = List.copyOf(guides);
  }

  /**
   * A place of the guide.
   *
   * @param edge the edge of the panel that is measured from: {@code left} or {@code right}
   * @param distance from that edge to the side of the guide that the base runs along; negative
   *     beyond the edge
   * @param middle x of the bit's middle
   */
  public record Guide(String edge, double distance, double middle) {}

  /** The routing of all relief grooves in line with a miter slot, by panel and slot. */
  public static List<Routing> of(Site site, Iterable<Board> boards) {
    List<Routing> found = new ArrayList<>();
    for (Board board : boards) {
      if (!board.id().startsWith("outfeed/l")) {
        continue;
      }
      for (Feature feature : board.features()) {
        if (feature instanceof Recess recess && recess.operation().equals("relief")) {
          routing(site, board, recess).ifPresent(found::add);
        }
      }
    }
    return found;
  }

  private static Optional<Routing> routing(Site site, Board board, Recess recess) {
    Box uv = recess.outline().bounds();
    Vec a = board.placement().apply(uv.low());
    Vec b = board.placement().apply(uv.high());
    double left = Math.min(a.x(), b.x());
    double right = Math.max(a.x(), b.x());
    Box panel = board.box();
    for (int n = 1; n <= site.saw().slots().size(); n++) {
      MiterSlot slot = site.saw().slots().get(n - 1);
      boolean inLine = left < slot.at().nominal() && slot.at().nominal() < right;
      if (inLine && recess.depth() < board.thickness()) {
        Router router = site.brief().workshop().router();
        double bit = Math.min(router.bit().nominal(), right - left);
        return Optional.of(
            new Routing(
                board.id(),
                n,
                left,
                right,
                Math.max(panel.low().y(), Math.min(a.y(), b.y())),
                Math.min(panel.high().y(), Math.max(a.y(), b.y())),
                recess.depth(),
                bit,
                passes(recess.depth(), router.shank().nominal()),
                guides(left, right, bit, router.base().nominal() / 2, panel)));
      }
    }
    return Optional.empty();
  }

  /** Equal passes no deeper than the shank allows, and a last one of {@link #LAST}. */
  static List<Double> passes(double depth, double shank) {
    double deepest = shank >= THICK ? THICK_PASS : THIN_PASS;
    if (depth <= LAST) {
      return List.of(depth);
    }
    int rough = (int) Math.ceil((depth - LAST) / deepest - SAME);
    List<Double> passes = new ArrayList<>();
    for (int i = 1; i <= rough; i++) {
      passes.add((depth - LAST) * i / rough);
    }
    passes.add(depth);
    return passes;
  }

  /** The left wall first, then the right wall, then what is left between them. */
  static List<Guide> guides(double left, double right, double bit, double half, Box panel) {
    List<Guide> guides = new ArrayList<>();
    double first = left + bit / 2;
    double last = right - bit / 2;
    guides.add(new Guide("left", first - half - panel.low().x(), first));
    if (last - first < SAME) {
      return guides;
    }
    guides.add(new Guide("right", panel.high().x() - (last + half), last));
    int lanes = (int) Math.ceil((last - first) / (bit * (1 - OVERLAP)) - SAME);
    for (int i = 1; i < lanes; i++) {
      double middle = first + (last - first) * i / lanes;
      guides.add(new Guide("left", middle - half - panel.low().x(), middle));
    }
    return guides;
  }

  /** In one sentence, in the user's unit. */
  public String words(Unit unit) {
    LengthFormat format = LengthFormat.of(unit);
    // The last pass takes so little that coarser fractions would say the same depth twice.
    LengthFormat fine = unit == Unit.INCH ? LengthFormat.inches(64) : format;
    StringBuilder words = new StringBuilder();
    words.append(panel).append(", slot ").append(slot).append(": ");
    words.append(format.withUnit(bit)).append(" bit, ").append(passes.size());
    words.append(passes.size() == 1 ? " pass at " : " passes at ");
    for (int i = 0; i < passes.size(); i++) {
      words.append(i == 0 ? "" : ", ").append(fine.near(passes.get(i)));
    }
    words.append(" deep; guide ");
    for (int i = 0; i < guides.size(); i++) {
      Guide guide = guides.get(i);
      words.append(i == 0 ? "" : ", then ");
      words.append(format.withUnit(Math.abs(guide.distance())));
      words.append(guide.distance() < 0 ? " beyond the " : " from the ").append(guide.edge());
      words.append(" edge");
    }
    return words.toString();
  }
}
