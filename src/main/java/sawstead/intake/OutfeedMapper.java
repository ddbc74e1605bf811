package sawstead.intake;

import java.util.Optional;
import sawstead.brief.HingeStock;
import sawstead.brief.JointKind;
import sawstead.brief.Mount;
import sawstead.brief.OutfeedWish;
import sawstead.brief.Side;

/** Reads {@code station.outfeed}. */
final class OutfeedMapper {

  private final Section station;
  private final SheetNames sheets;

  OutfeedMapper(Section station, SheetNames sheets) {
    this.station = station;
    this.sheets = sheets;
  }

  /** The outfeed; one of the design's own choice if the brief does not speak of it. */
  Optional<OutfeedWish> outfeed() {
    if (station.is("outfeed", "none")) {
      return Optional.empty();
    }
    Section outfeed = station.section("outfeed");
    Section grooves = outfeed.section("grooves");
    return Optional.of(
        new OutfeedWish(
            outfeed.word("mount", Mount.class),
            outfeed.wish("depth"),
            outfeed.wish("width"),
            outfeed.measure("overhang"),
            outfeed.count("lids"),
            outfeed.wordIfGiven("hinge", Side.class),
            outfeed.measure("drop"),
            grooves.measure("side"),
            grooves.measure("floor"),
            grooves.measure("overrun"),
            outfeed.measure("chamfer"),
            hardware(outfeed.section("hardware")),
            ContentsMapper.contents(outfeed),
            sheets.named(outfeed, "sheet"),
            sheets.named(outfeed, "lidSheet"),
            outfeed.word("joint", JointKind.class),
            outfeed.measure("shim")));
  }

  private static HingeStock hardware(Section hinge) {
    return new HingeStock(
        hinge.measure("knuckle"),
        hinge.measure("leafWidth"),
        hinge.measure("leafThickness"),
        hinge.measure("pitch"));
  }
}
