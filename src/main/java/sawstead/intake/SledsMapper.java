package sawstead.intake;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import sawstead.brief.GoodSide;
import sawstead.brief.MiterSlot;
import sawstead.brief.RunnerChoice;
import sawstead.brief.Saw;
import sawstead.brief.Sheet;
import sawstead.brief.Side;
import sawstead.brief.SledKind;
import sawstead.brief.SledWish;
import sawstead.measure.Measured;
import sawstead.measure.Measured.Origin;

/**
 * Reads {@code sleds}. A runner lies flat in its slot, so its sheet must be thinner than the slot
 * is deep; where no sheet at hand is, a strip of solid wood that has to be planed joins the stock.
 */
final class SledsMapper {

  /** How much lower than its slot a runner is, mm (common practice, no source: 0.8 to 1.5). */
  static final double BELOW = 1.2;

  /** The least that a runner may be lower than its slot, mm. */
  private static final double LEAST_BELOW = 0.5;

  /** A runner of less than this share of the slot's depth guides badly. */
  private static final double LEAST_SHARE = 0.55;

  private final Section brief;
  private final Saw saw;
  private final List<Sheet> stock;
  private final List<Sheet> strips = new ArrayList<>();

  SledsMapper(Section brief, Saw saw, List<Sheet> stock) {
    this.brief = brief;
    this.saw = saw;
    this.stock = stock;
  }

  List<SledWish> sleds() {
    Duplicates ids = new Duplicates();
    SheetNames sheets = new SheetNames(stock);
    List<SledWish> sleds = new ArrayList<>();
    for (Section sled : brief.sections("sleds")) {
      sleds.add(
          new SledWish(
              ids.fresh(sled, "id"),
              sled.word("kind", SledKind.class),
              sheets.named(sled, "sheet").orElse(sheets.standard()),
              sheets.named(sled, "runnerSheet").orElseGet(this::strip),
              sled.wordIfGiven("runners", RunnerChoice.class),
              sled.wish("runnerWidth"),
              sled.measure("play"),
              sled.measure("proud"),
              sled.wish("left"),
              sled.wish("right"),
              sled.wish("widest"),
              sled.flag("bridge"),
              sled.word("stopSide", Side.class),
              sled.measure("extension"),
              sled.wish("guardLength"),
              sled.measure("hands"),
              sled.flag("guardStays")));
    }
    return sleds;
  }

  /** Strips that the sleds need and the stock has not; read after the sleds. */
  List<Sheet> strips() {
    return strips;
  }

  private String strip() {
    double depth = saw.slots().stream().mapToDouble(s -> s.depth().low()).min().orElse(9.5);
    Optional<Sheet> fits =
        stock.stream()
            .filter(s -> s.thickness().nominal() <= depth - LEAST_BELOW)
            .filter(s -> s.thickness().nominal() >= depth * LEAST_SHARE)
            .max(Comparator.comparingDouble(s -> s.thickness().nominal()));
    if (fits.isPresent()) {
      return fits.get().name();
    }
    if (strips.isEmpty()) {
      double nominal =
          saw.slots().stream()
              .map(MiterSlot::depth)
              .mapToDouble(Measured::nominal)
              .min()
              .orElse(9.5);
      double height = Math.floor(10 * (nominal - BELOW)) / 10;
      strips.add(solidWood(height));
    }
    return strips.get(0).name();
  }

  /** A strip of straight-grained hardwood, planed to a thickness; density of beech (no source). */
  private Sheet solidWood(double height) {
    String path = brief.pathOf("sleds") + ".runnerSheet";
    String name = "runner-strip";
    while (new SheetNames(stock).find(name).isPresent()) {
      name += "-x";
    }
    return new Sheet(
        name,
        Measured.of(path, 1500),
        Measured.of(path, 60),
        "solid wood, planed",
        Measured.plusMinus(path, height, 0.1, Origin.BANDED),
        Measured.plusMinus(path, 700, 70, Origin.BANDED),
        true,
        GoodSide.BOTH,
        Optional.empty(),
        Measured.of(path, 0),
        Optional.empty(),
        List.of());
  }
}
