package sawstead.intake;

import java.util.Optional;
import sawstead.brief.Carry;
import sawstead.brief.Cutting;
import sawstead.brief.Saw;

/** Reads the {@code cutting} section; two defaults follow from the saw. */
final class CuttingMapper {

  /** A full kerf, REF-TRD-02, mm. */
  private static final double FULL_KERF = 3.2;

  /** Rip capacity when there is no saw to tell it, mm; common practice, no source. */
  private static final double USUAL_RIP = 610;

  private final Section cutting;
  private final Optional<Saw> saw;

  CuttingMapper(Section cutting, Optional<Saw> saw) {
    this.cutting = cutting;
    this.saw = saw;
  }

  private static Carry carry(Section carry) {
    return new Carry(
        carry.plain("longest"),
        carry.plain("widest"),
        carry.plain("heaviest"),
        carry.plain("oversize"),
        carry.plain("kerf"));
  }

  Cutting cutting() {
    return new Cutting(
        cutting.plain("guidedKerf"),
        cutting
            .measure("tableKerf", saw.map(s -> s.blade().kerf().nominal()).orElse(FULL_KERF))
            .nominal(),
        cutting.plain("longest"),
        cutting.plain("widest"),
        cutting.plain("heaviest"),
        cutting
            .measure("ripCapacity", saw.map(s -> s.fence().right().nominal()).orElse(USUAL_RIP))
            .nominal(),
        cutting.plain("sledCapacity"),
        cutting.plain("farthestStop"),
        cutting.plain("infeed"),
        cutting.plain("outfeed"),
        cutting.has("carry") ? Optional.of(carry(cutting.section("carry"))) : Optional.empty(),
        cutting.text("favour").filter("labour"::equals).isPresent());
  }
}
