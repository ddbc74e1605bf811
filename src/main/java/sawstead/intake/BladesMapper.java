package sawstead.intake;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sawstead.brief.Alignment;
import sawstead.brief.Blade;
import sawstead.brief.OwnedBlade;
import sawstead.brief.Saw;
import sawstead.measure.Measured;

/** Reads {@code blades} and {@code alignment}: what is measured at the blade before any jig. */
final class BladesMapper {

  private final Section brief;
  private final Saw saw;

  BladesMapper(Section brief, Saw saw) {
    this.brief = brief;
    this.saw = saw;
  }

  /** The blades of the brief; the saw's own where it lists none. */
  List<OwnedBlade> blades() {
    if (!brief.has("blades")) {
      Blade own = saw.blade();
      return List.of(new OwnedBlade("blade", own.diameter(), own.plate(), own.kerf(), true));
    }
    Duplicates ids = new Duplicates();
    List<Section> sections = brief.sections("blades");
    List<Section> mounted = sections.stream().filter(s -> s.flag("mounted")).toList();
    if (mounted.size() > 1) {
      mounted
          .get(1)
          .problem(
              "mounted",
              "two blades are mounted on one saw",
              "write `mounted: true` at the one that is on the saw");
    }
    List<OwnedBlade> blades = new ArrayList<>();
    for (Section blade : sections) {
      boolean on = mounted.isEmpty() ? blades.isEmpty() : blade == mounted.get(0);
      OwnedBlade one =
          new OwnedBlade(
              ids.fresh(blade, "id"),
              blade.measure("diameter", saw.blade().diameter().nominal()),
              blade.measure("plate"),
              blade.measure("kerf"),
              on);
      if (!blade.isBad("kerf") && one.kerf().nominal() <= one.plate().nominal()) {
        blade.problem(
            "kerf",
            "the kerf of `" + one.id() + "` is no wider than its plate",
            "measure the teeth across their tips");
      }
      blades.add(one);
    }
    return blades;
  }

  Optional<Alignment> alignment() {
    if (!brief.has("alignment")) {
      return Optional.empty();
    }
    Section alignment = brief.section("alignment");
    int slot = alignment.count("slot");
    if (slot < 1 || slot > saw.slots().size()) {
      alignment.problem(
          "slot",
          "the saw has " + saw.slots().size() + " slots, and no slot " + slot,
          "number them from 1 at the left");
    }
    List<List<Measured>> widths = alignment.rows("widths", 3);
    if (widths.size() > saw.slots().size()) {
      alignment.problem(
          "widths",
          "widths of more slots than the saw has, " + saw.slots().size(),
          "write one row for each slot, from the left: [front, middle, rear]");
    }
    return Optional.of(
        new Alignment(
            slot,
            alignment.measure("front"),
            alignment.measure("rear"),
            alignment.measure("apart"),
            widths));
  }
}
