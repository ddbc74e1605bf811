package sawstead.intake;

import java.util.Optional;
import sawstead.brief.JointKind;
import sawstead.brief.Side;
import sawstead.brief.WingWish;

/** Reads one wing of {@code station.wings}. */
final class WingMapper {

  private final Section wings;
  private final SheetNames sheets;

  WingMapper(Section wings, SheetNames sheets) {
    this.wings = wings;
    this.sheets = sheets;
  }

  /**
   * The wing on one side; a wing of the design's own choice if the brief does not speak of it.
   *
   * @param side LEFT or RIGHT, where it opens unless told otherwise
   */
  Optional<WingWish> wing(Side side) {
    String key = side.word();
    Section wing = wings.section(key);
    if (wings.is(key, "none")) {
      return Optional.empty();
    }
    return Optional.of(
        new WingWish(
            wing.wish("width"),
            wing.wish("depth"),
            wing.wish("front"),
            wing.wish("height"),
            wing.word("opening", Side.class, side),
            wing.text("purpose").orElse("storage"),
            ContentsMapper.contents(wing),
            wing.wish("drop"),
            sheets.named(wing, "sheet"),
            wing.word("joint", JointKind.class)));
  }
}
