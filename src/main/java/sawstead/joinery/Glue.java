package sawstead.joinery;

import java.util.List;

/** Says when a joint that lives by glue has none. */
final class Glue {
  private Glue() {}

  static Joined needed(Joined joined, Fixings fixings, Meeting meeting) {
    return fixings.glue()
        ? joined
        : joined.lacking(List.of("no glue at hand, and brads only clamp: " + meeting.where()));
  }
}
