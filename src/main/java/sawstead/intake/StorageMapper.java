package sawstead.intake;

import java.util.Optional;
import sawstead.brief.Side;
import sawstead.brief.StorageWish;

/** Reads {@code storage}. */
final class StorageMapper {

  private final Section brief;
  private final SheetNames sheets;

  StorageMapper(Section brief, SheetNames sheets) {
    this.brief = brief;
    this.sheets = sheets;
  }

  /** The rack; empty when the brief does not speak of one. */
  Optional<StorageWish> storage() {
    if (!brief.has("storage")) {
      return Optional.empty();
    }
    Section storage = brief.section("storage");
    Section sticks = storage.section("pushSticks");
    StorageWish wish =
        new StorageWish(
            storage.wordIfGiven("side", Side.class),
            sheets.named(storage, "sheet").orElse(sheets.standard()),
            storage.flag("blades"),
            gauge(storage),
            sticks.count("count"),
            sticks.measure("length"),
            sticks.measure("height"),
            sticks.measure("thickness"),
            storage.wish("depth"),
            storage.wish("height"));
    if (!wish.blades() && wish.gauge().isEmpty() && wish.sticks() == 0) {
      storage.problem(
          "blades",
          "nothing is to be kept in the rack",
          "keep blades, the gauge or push sticks in it, or remove `storage`");
    }
    return Optional.of(wish);
  }

  private static Optional<StorageWish.GaugeSize> gauge(Section storage) {
    Section gauge = storage.section("gauge");
    if (storage.is("gauge", "none")) {
      return Optional.empty();
    }
    return Optional.of(
        new StorageWish.GaugeSize(
            gauge.measure("width"),
            gauge.measure("depth"),
            gauge.measure("height"),
            gauge.measure("length"),
            gauge.measure("bar")));
  }
}
