package sawstead.intake;

import sawstead.brief.CasterSet;
import sawstead.brief.Casters;
import sawstead.brief.MobileFrame;
import sawstead.brief.NoCasters;
import sawstead.measure.Measured;

/** Reads the {@code casters} section. */
final class CastersMapper {

  /**
   * Below this height a caster usually has a wheel of 50 mm, else of 75 (trade notes, no source).
   */
  private static final double LOW = 90;

  private final Section brief;
  private final Section casters;

  CastersMapper(Section brief) {
    this.brief = brief;
    this.casters = brief.section("casters");
  }

  Casters casters() {
    if (!brief.has("casters") || brief.is("casters", "none")) {
      return new NoCasters();
    }
    if (!casters.has("frame")) {
      return set();
    }
    if (casters.has("height") || casters.has("wheel") || casters.has("swivel")) {
      casters.problem(
          "frame",
          "the stand has casters and a mobile frame",
          "write either `frame`, or height and the rest of a caster");
    }
    return frame();
  }

  private CasterSet set() {
    Section plate = casters.section("plate");
    Measured height = casters.measure("height");
    return new CasterSet(
        height,
        plate.measure("length"),
        plate.measure("width"),
        plate.measure("thickness"),
        casters.measure("swivel"),
        casters.measure("wheel", height.nominal() < LOW ? 50 : 75),
        casters.measure("rating"),
        casters.measure("mass"));
  }

  private MobileFrame frame() {
    Section frame = casters.section("frame");
    return new MobileFrame(
        frame.measure("insideWidth"),
        frame.measure("insideDepth"),
        frame.measure("addedHeight"),
        frame.measure("rim"),
        frame.measure("lip"),
        frame.measure("rating"),
        frame.measure("mass"));
  }
}
