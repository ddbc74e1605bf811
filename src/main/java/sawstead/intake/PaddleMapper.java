package sawstead.intake;

import java.util.Optional;
import sawstead.brief.PaddleWish;

/** Reads {@code paddle}. */
final class PaddleMapper {

  private final Section brief;
  private final SheetNames sheets;

  PaddleMapper(Section brief, SheetNames sheets) {
    this.brief = brief;
    this.sheets = sheets;
  }

  /** The paddle; empty when the brief does not speak of one. */
  Optional<PaddleWish> paddle() {
    Section paddle = brief.section("paddle");
    if (!brief.has("paddle")) {
      return Optional.empty();
    }
    return Optional.of(
        new PaddleWish(
            sheets.named(paddle, "sheet").orElse(sheets.standard()),
            paddle.measure("width"),
            paddle.measure("gap"),
            paddle.wish("bottom"),
            paddle.wish("press"),
            paddle.wish("travel")));
  }
}
