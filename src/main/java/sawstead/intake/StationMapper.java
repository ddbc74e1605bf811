package sawstead.intake;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sawstead.brief.PocketSide;
import sawstead.brief.PortUse;
import sawstead.brief.PortWish;
import sawstead.brief.Saw;
import sawstead.brief.Side;
import sawstead.brief.StationWish;
import sawstead.measure.Measured;

/** Reads the {@code station} section. */
final class StationMapper {

  private final Section station;
  private final Saw saw;
  private final boolean hasVac;
  private final SheetNames sheets;

  StationMapper(Section station, Saw saw, boolean hasVac, SheetNames sheets) {
    this.station = station;
    this.saw = saw;
    this.hasVac = hasVac;
    this.sheets = sheets;
  }

  StationWish station() {
    Section wings = station.section("wings");
    WingMapper wing = new WingMapper(wings, sheets);
    Optional<Measured> legLength = legLength(station.section("legs"));
    Optional<Measured> workingHeight = station.wish("workingHeight");
    if (workingHeight.isPresent() && legLength.isPresent()) {
      station.problem(
          "workingHeight",
          "the working height and the leg length are both given, and each follows from the other",
          "remove one of the two");
    }
    return new StationWish(
        workingHeight,
        legLength,
        sheets.named(station, "sheet").orElse(sheets.standard()),
        new StandMapper(station.section("stand"), saw, hasVac).stand(),
        wing.wing(Side.LEFT),
        wing.wing(Side.RIGHT),
        new OutfeedMapper(station, sheets).outfeed(),
        ports(),
        station.word("pockets", PocketSide.class),
        station.measure("contact"));
  }

  private Optional<Measured> legLength(Section legs) {
    double longest = sheets.longest();
    legs.measureOf("length")
        .parsed()
        .filter(length -> length.nominal() > longest)
        .ifPresent(
            length ->
                legs.problem(
                    "length",
                    "leg length is " + words(length.nominal()) + ", longer than any sheet in stock",
                    "write at most "
                        + words(longest)
                        + ", or leave it out and give workingHeight"));
    return legs.wish("length");
  }

  private String words(double length) {
    return station.reading().inWords(length);
  }

  private List<PortWish> ports() {
    Duplicates ids = new Duplicates();
    List<PortWish> ports = new ArrayList<>();
    for (Section port : station.sections("ports")) {
      List<Measured> at = port.row("at", 3);
      PortUse use = port.word("use", PortUse.class, PortUse.FREE);
      Optional<Measured> diameter = port.wish("diameter");
      if (use == PortUse.FREE && diameter.isEmpty() && !port.isBad("use")) {
        port.problem(
            "diameter",
            "a port for free use needs a diameter",
            "write `diameter: 2-1/2`, or a use");
      }
      ports.add(
          new PortWish(
              ids.fresh(port, "id"),
              through(port),
              at.get(0).nominal(),
              at.get(1).nominal(),
              at.get(2).nominal(),
              use,
              diameter));
    }
    return ports;
  }

  private static List<String> through(Section port) {
    return port.entries("through").stream()
        .map(Section.Entry::item)
        .filter(item -> item instanceof Item.Scalar)
        .map(item -> ((Item.Scalar) item).text())
        .toList();
  }
}
