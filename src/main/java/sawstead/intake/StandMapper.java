package sawstead.intake;

import java.util.Optional;
import sawstead.brief.Footing;
import sawstead.brief.JointKind;
import sawstead.brief.Saw;
import sawstead.brief.Side;
import sawstead.brief.SideWish;
import sawstead.brief.StandWish;
import sawstead.brief.StretcherFit;
import sawstead.measure.Measured;

/** Reads {@code station.stand}, and refuses a stand that the saw's feet do not fit on. */
final class StandMapper {

  private final Section stand;
  private final Footing feet;
  private final boolean hasVac;

  StandMapper(Section stand, Saw saw, boolean hasVac) {
    this.stand = stand;
    this.feet = saw.feet().outline();
    this.hasVac = hasVac;
  }

  StandWish stand() {
    Optional<Side> vacSide =
        stand
            .wordIfGiven("vacSide", Side.class)
            .or(() -> hasVac ? Optional.of(Side.FRONT) : Optional.empty());
    Section sides = stand.section("sides");
    Section stretchers = stand.section("stretchers");
    StandWish wish =
        new StandWish(
            stand.wish("width"),
            stand.wish("depth"),
            stand.wish("left"),
            stand.wish("front"),
            stand.section("legs").measure("width"),
            stretchers.measure("height"),
            stretchers.word("fit", StretcherFit.class),
            side(sides, Side.FRONT, vacSide),
            side(sides, Side.REAR, vacSide),
            side(sides, Side.LEFT, vacSide),
            side(sides, Side.RIGHT, vacSide),
            vacSide,
            stand.word("joint", JointKind.class));
    feetFit(wish);
    return wish;
  }

  private static SideWish side(Section sides, Side side, Optional<Side> vacSide) {
    boolean forVac = vacSide.filter(side::equals).isPresent();
    return sides.word(side.word(), SideWish.class, forVac ? SideWish.OPEN : SideWish.STRETCHERS);
  }

  private void feetFit(StandWish wish) {
    if (stand.reading().problems().hasBelow("saw.feet")) {
      return;
    }
    double across = feet.left().nominal() + feet.right().nominal();
    double along = feet.rear().nominal() - feet.front().nominal();
    wish.width().ifPresent(width -> least("width", "wide", width, across));
    wish.depth().ifPresent(depth -> least("depth", "deep", depth, along));
    wish.left().ifPresent(left -> side("left", left, feet.left().nominal(), wish.width(), across));
    wish.front()
        .ifPresent(front -> side("front", front, -feet.front().nominal(), wish.depth(), along));
  }

  private void least(String key, String word, Measured size, double feet) {
    if (size.nominal() < feet) {
      stand.problem(
          key,
          "the stand is "
              + words(size.nominal())
              + " "
              + word
              + ", less than the saw's feet, "
              + words(feet),
          "write at least " + words(feet) + ", or leave it out");
    }
  }

  /**
   * The feet stand within the stand on this side and, if its size is given, on the other.
   *
   * @param outward whereas `front` grows inward, `left` grows outward: the feet's place, outward
   */
  private void side(String key, Measured at, double outward, Optional<Measured> size, double feet) {
    double place = key.equals("left") ? at.nominal() : -at.nominal();
    double beyond = size.map(s -> s.nominal() - feet - (place - outward)).orElse(0.0);
    if (place < outward || beyond < 0) {
      stand.problem(
          key,
          "with its "
              + key
              + " side at "
              + words(at.nominal())
              + " the stand does not carry all of "
              + "the saw's feet, whose "
              + key
              + " side is at "
              + words(key.equals("left") ? outward : -outward),
          "move it, or leave it out");
    }
  }

  private String words(double length) {
    return stand.reading().inWords(length);
  }
}
