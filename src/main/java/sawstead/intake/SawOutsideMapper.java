package sawstead.intake;

import java.util.Optional;
import sawstead.brief.DustPort;
import sawstead.brief.HandWheel;
import sawstead.brief.Side;

/** Reads what stands out from the saw's body: dust port and hand-wheel. */
final class SawOutsideMapper {

  private final Section saw;
  private final double tableHeight;

  SawOutsideMapper(Section saw, double tableHeight) {
    this.saw = saw;
    this.tableHeight = tableHeight;
  }

  Optional<DustPort> dust() {
    Section dust = saw.section("dust");
    if (!saw.has("dust") || saw.is("dust", "none")) {
      return Optional.empty();
    }
    return Optional.of(
        new DustPort(
            dust.word("side", Side.class),
            dust.measure("x"),
            dust.measure("below", tableHeight / 2),
            dust.measure("diameter"),
            dust.measure("out")));
  }

  HandWheel wheel() {
    Section wheel = saw.section("wheel");
    return new HandWheel(
        wheel.word("side", Side.class),
        wheel.measure("at"),
        wheel.measure("below"),
        wheel.measure("diameter"),
        wheel.measure("out"));
  }
}
