package sawstead.intake;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sawstead.brief.Hose;
import sawstead.brief.Tier;
import sawstead.brief.Vac;
import sawstead.measure.Measured;

/** Reads the {@code vac} section. */
final class VacMapper {

  private static final double BENDS_PER_DIAMETER = 3;
  private static final double CUFF_OVER_HOSE = 18;

  private final Section brief;
  private final Section vac;

  VacMapper(Section brief) {
    this.brief = brief;
    this.vac = brief.section("vac");
  }

  Optional<Vac> vac() {
    if (!brief.has("vac") || brief.is("vac", "none")) {
      return Optional.empty();
    }
    return Optional.of(
        new Vac(
            vac.text("name").orElse("vac"),
            tiers(),
            vac.measure("lidRoom"),
            vac.measure("around"),
            hose(),
            vac.measure("mass")));
  }

  private List<Tier> tiers() {
    boolean box = vac.has("width") || vac.has("depth") || vac.has("height");
    if (!vac.has("tiers")) {
      return List.of(
          new Tier(false, vac.measure("width"), vac.measure("depth"), vac.measure("height")));
    }
    if (box) {
      vac.problem(
          "tiers",
          "the vac is given as a box and as tiers",
          "write either width, depth and height, or tiers");
    }
    List<Tier> tiers = new ArrayList<>();
    for (Section tier : vac.sections("tiers")) {
      tiers.add(tier(tier));
    }
    return tiers;
  }

  private static Tier tier(Section tier) {
    Measured height = tier.measure("height");
    if (!tier.has("diameter")) {
      return new Tier(false, tier.measure("width"), tier.measure("depth"), height);
    }
    if (tier.has("width") || tier.has("depth")) {
      tier.problem(
          "diameter", "the tier is round and square", "write either diameter, or width and depth");
    }
    Measured diameter = tier.measure("diameter");
    return new Tier(true, diameter, diameter, height);
  }

  private Hose hose() {
    Section hose = vac.section("hose");
    Measured diameter = hose.measure("diameter");
    return new Hose(
        diameter,
        hose.measure("bend", BENDS_PER_DIAMETER * diameter.nominal()),
        hose.measure("length"),
        hose.measure("cuff", diameter.nominal() + CUFF_OVER_HOSE));
  }
}
