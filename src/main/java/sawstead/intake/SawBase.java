package sawstead.intake;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sawstead.brief.Blade;
import sawstead.brief.BoltHole;
import sawstead.brief.Feet;
import sawstead.brief.Footing;
import sawstead.brief.SawBottom;
import sawstead.brief.SawTable;
import sawstead.measure.Measured;
import sawstead.measure.Measured.Origin;

/** Reads what lies under the table: body, opening and bolts, which all follow the feet. */
final class SawBase {

  /** How far the opening of an open bottom lies inside the feet, mm (trade notes, no source). */
  private static final double OPENING_INSET = 40;

  /** How far the body stands out beyond the feet, mm (trade notes, no source). */
  private static final double BODY_OUTSET = 10;

  private static final double BOLT_BAND = 10;
  private static final double BOLT_BAND_UNKNOWN = 20;

  private final Section saw;
  private final SawTable table;
  private final Blade blade;
  private final Feet feet;

  SawBase(Section saw, SawTable table, Blade blade, Feet feet) {
    this.saw = saw;
    this.table = table;
    this.blade = blade;
    this.feet = feet;
  }

  /** The opening under an open bottom. */
  Optional<Footing> opening(SawBottom bottom) {
    Section opening = saw.section("opening");
    if (bottom == SawBottom.CLOSED) {
      if (saw.has("opening")) {
        saw.problem(
            "opening",
            "the saw has an opening, but its bottom is closed",
            "write `bottom: open`, or remove the opening");
      }
      return Optional.empty();
    }
    Footing outline = feet.outline();
    double inset = Math.min(OPENING_INSET, Math.min(width(outline), depth(outline)) / 4);
    return Optional.of(
        new Footing(
            opening.measure("left", outline.left().nominal() - inset),
            opening.measure("right", outline.right().nominal() - inset),
            opening.measure("front", outline.front().nominal() + inset),
            opening.measure("rear", outline.rear().nominal() - inset)));
  }

  /** The body under the table. */
  Footing body() {
    Section body = saw.section("body");
    Footing outline = feet.outline();
    double leftEdge = blade.leftEdge().nominal();
    return new Footing(
        body.measure("left", Math.min(outline.left().nominal() + BODY_OUTSET, leftEdge)),
        body.measure(
            "right",
            Math.min(outline.right().nominal() + BODY_OUTSET, table.width().nominal() - leftEdge)),
        body.measure("front", Math.max(outline.front().nominal() - BODY_OUTSET, 0)),
        body.measure(
            "rear", Math.min(outline.rear().nominal() + BODY_OUTSET, table.depth().nominal())));
  }

  /** Whether the positions of the bolts were measured. */
  boolean boltsMeasured() {
    return saw.section("bolts").has("at");
  }

  /** The bolt holes, assumed in the middle of the foot pads if not measured. */
  List<BoltHole> bolts() {
    Section bolts = saw.section("bolts");
    Measured diameter = bolts.measure("diameter");
    if (!boltsMeasured()) {
      return assumed(diameter);
    }
    return bolts.rows("at", 2).stream()
        .map(at -> new BoltHole(at.get(0), at.get(1), diameter))
        .toList();
  }

  private List<BoltHole> assumed(Measured diameter) {
    Footing outline = feet.outline();
    double half = feet.pad().nominal() / 2;
    double[] across = {-outline.left().nominal() + half, outline.right().nominal() - half};
    double[] along = {outline.front().nominal() + half, outline.rear().nominal() - half};
    boolean unknown = saw.is("bolts", "unknown");
    Origin origin = unknown ? Origin.UNKNOWN : Origin.DEFAULT;
    double band = unknown ? BOLT_BAND_UNKNOWN : BOLT_BAND;
    List<BoltHole> holes = new ArrayList<>();
    for (double y : along) {
      for (double x : across) {
        String path = saw.pathOf("bolts") + ".at[" + holes.size() + "]";
        holes.add(
            new BoltHole(
                Measured.plusMinus(path + "[0]", x, band, origin),
                Measured.plusMinus(path + "[1]", y, band, origin),
                diameter));
      }
    }
    return holes;
  }

  private static double width(Footing outline) {
    return Math.max(0, outline.left().nominal() + outline.right().nominal());
  }

  private static double depth(Footing outline) {
    return Math.max(0, outline.rear().nominal() - outline.front().nominal());
  }
}
