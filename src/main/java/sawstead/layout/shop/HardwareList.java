package sawstead.layout.shop;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import sawstead.brief.CasterSet;
import sawstead.brief.MobileFrame;
import sawstead.check.FastenerWords;
import sawstead.check.Words;
import sawstead.joinery.Board;
import sawstead.joinery.Fastener;
import sawstead.joinery.FastenerKind;
import sawstead.measure.Unit;
import sawstead.solid.Bore;
import sawstead.solid.Feature;
import sawstead.solid.Vec;
import sawstead.station.Part;
import sawstead.station.PartKind;
import sawstead.station.Station;

/**
 * What is bought: screws, brads, glue, hinges, casters, what jigs and drawers run and hold with,
 * and the hole saws that the bores need. Spares are common practice, no source: a tenth more,
 * rounded up to the next ten; bolts as counted.
 */
public final class HardwareList {
  /** Bores wider than this are cut with a hole saw, mm; common practice, no source. */
  private static final double WIDEST_DRILL = 25;

  private static final double METRE = 1000;

  private static final double FOOT = 304.8;

  private final Station station;
  private final Words words;
  private final List<HardwareLine> lines = new ArrayList<>();

  private HardwareList(Station station) {
    this.station = station;
    this.words = new Words(station.brief().units());
  }

  /** The list. */
  public static List<HardwareLine> of(Station station) {
    HardwareList list = new HardwareList(station);
    list.fasteners();
    list.glue();
    list.bands();
    list.hinges();
    list.casters();
    list.jigs();
    list.bores();
    return List.copyOf(list.lines);
  }

  private void fasteners() {
    Map<String, Integer> counts = new TreeMap<>();
    Map<String, FastenerKind> kinds = new TreeMap<>();
    for (Fastener fastener : station.fasteners()) {
      String item = FastenerWords.item(fastener, words);
      counts.merge(item, 1, Integer::sum);
      kinds.put(item, fastener.kind());
    }
    counts.forEach(
        (item, n) ->
            lines.add(
                new HardwareLine(
                    item,
                    n,
                    kinds.get(item) == FastenerKind.BOLT ? n : withSpares(n),
                    note(kinds.get(item)))));
  }

  static int withSpares(int needed) {
    return (int) Math.ceil(needed * 1.1 / 10) * 10;
  }

  private static String note(FastenerKind kind) {
    return switch (kind) {
      case WOOD_SCREW, HINGE_SCREW, CASTER_SCREW -> "countersunk";
      case POCKET_SCREW -> "coarse thread for plywood";
      case BRAD -> "holds while the glue sets";
      case BOLT -> "with two washers and a locking nut";
    };
  }

  private void glue() {
    if (station.fasteners().stream().anyMatch(Fastener::glued)) {
      lines.add(new HardwareLine("wood glue", 1, 1, "one bottle; a thin, even film on both faces"));
    }
  }

  /** Bands for the edges that show, by sheet. */
  private void bands() {
    EdgeBands edges = new EdgeBands(station.boards().values());
    Map<String, Double> lengths = new TreeMap<>();
    for (Board board : station.boards().values()) {
      lengths.merge(board.stock(), edges.of(board).length(), Double::sum);
    }
    boolean inches = station.brief().units() == Unit.INCH;
    double each = inches ? FOOT : METRE;
    lengths.forEach(
        (sheet, length) -> {
          if (length > 0) {
            lines.add(
                new HardwareLine(
                    "edge band for " + sheet + " where you want it, " + (inches ? "feet" : "m"),
                    (int) Math.ceil(length / each),
                    (int) Math.ceil(1.1 * length / each),
                    "for edges that show, see the cut list; sizes are without it, so cut each panel"
                        + " smaller by the bands' thickness"));
          }
        });
  }

  private void hinges() {
    for (Part part : station.parts().values()) {
      if (part.kind() == PartKind.HARDWARE && part.id().contains("/knuckle")) {
        Vec size = part.body().box().size();
        double length = Math.max(size.x(), Math.max(size.y(), size.z()));
        lines.add(
            new HardwareLine(
                "continuous hinge, cut to " + words.length(length),
                1,
                1,
                part.id().substring(0, part.id().indexOf("/knuckle")) + "; file the cut end"));
      }
    }
  }

  private void casters() {
    if (station.brief().casters() instanceof CasterSet set && station.site().isPresent()) {
      String size =
          "swivel caster, wheel "
              + words.length(set.wheel().nominal())
              + ", height "
              + words.length(set.height().nominal());
      lines.add(new HardwareLine(size, 4, 4, "with brake; rated load each at least " + mass(set)));
    } else if (station.brief().casters() instanceof MobileFrame frame
        && station.site().isPresent()) {
      String size =
          "mobile frame, inside "
              + words.length(frame.insideWidth().nominal())
              + " x "
              + words.length(frame.insideDepth().nominal());
      lines.add(new HardwareLine(size, 1, 1, "under the base"));
    }
  }

  /** What units round the saw need that no sheet gives. */
  private void jigs() {
    for (Part part : station.parts().values()) {
      if (part.kind() != PartKind.HARDWARE) {
        continue;
      }
      Vec size = part.body().box().size();
      String unit = part.unit();
      switch (part.id().substring(part.id().indexOf('/') + 1)) {
        case "track" -> add("track for a stop, cut to " + words.length(size.x()), unit);
        case "clamp-arm" -> add("hold-down clamp with an upright handle", unit);
        case "slide-1-stays" ->
            add(
                "pair of drawer slides, "
                    + words.length(2 * Math.min(size.x(), size.y()))
                    + " thick, "
                    + words.length(Math.max(size.x(), size.y()))
                    + " long or the next shorter",
                unit);
        case "plate" ->
            add(
                "router plate "
                    + words.length(size.y())
                    + " x "
                    + words.length(size.x())
                    + ", "
                    + words.length(size.z())
                    + " thick",
                unit + "; with levelling screws");
        default -> {
          // Counted elsewhere, or owned already.
        }
      }
    }
    if (station.parts().containsKey("paddle/board")) {
      lines.add(new HardwareLine("washer for the paddle's pivots", 2, 2, "1 mm thick"));
    }
  }

  private void add(String item, String note) {
    lines.add(new HardwareLine(item, 1, 1, note));
  }

  private String mass(CasterSet set) {
    return words.mass(set.rating().nominal());
  }

  private void bores() {
    Map<Double, Integer> counts = new TreeMap<>();
    for (Board board : station.boards().values()) {
      for (Feature feature : board.features()) {
        if (feature instanceof Bore bore) {
          counts.merge(bore.diameter(), 1, Integer::sum);
        }
      }
    }
    counts.forEach((diameter, n) -> lines.add(bit(diameter, n)));
  }

  private HardwareLine bit(double diameter, int holes) {
    String times = holes == 1 ? "one hole" : holes + " holes";
    if (diameter <= WIDEST_DRILL) {
      return new HardwareLine("drill bit " + mm(diameter), 1, 1, times);
    }
    boolean atHand =
        station.brief().workshop().holeSaws().stream().anyMatch(d -> Math.abs(d - diameter) < 0.1);
    String size = station.brief().units() == Unit.MM ? mm(diameter) : words.length(diameter);
    return atHand
        ? new HardwareLine("hole saw " + size, 1, 1, times + "; at hand")
        : new HardwareLine("jigsaw, for holes of " + size, 1, 1, times + "; no hole saw at hand");
  }

  private static String mm(double millimetres) {
    return sawstead.measure.LengthFormat.millimetres().withUnit(millimetres);
  }
}
