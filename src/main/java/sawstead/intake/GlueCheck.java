package sawstead.intake;

import java.util.EnumSet;
import java.util.Set;
import sawstead.brief.JointKind;

/**
 * Refuses joints that live by glue where there is none: brads, dados and rabbets alone only hold.
 */
final class GlueCheck {
  private static final Set<JointKind> GLUED =
      EnumSet.of(JointKind.BRAD, JointKind.DADO, JointKind.RABBET);

  private GlueCheck() {}

  static void in(Section brief) {
    if (brief.section("workshop").flag("glue") || !brief.has("station")) {
      return;
    }
    Section station = brief.section("station");
    Section wings = station.section("wings");
    joint(station.section("stand"));
    joint(station.section("outfeed"));
    joint(wings.section("left"));
    joint(wings.section("right"));
  }

  private static void joint(Section unit) {
    unit.wordIfGiven("joint", JointKind.class)
        .filter(GLUED::contains)
        .ifPresent(
            kind ->
                unit.problem(
                    "joint",
                    "a "
                        + kind.name().toLowerCase(java.util.Locale.ROOT)
                        + " joint lives by its glue, and the workshop has none",
                    "write `screw` or `pocket`, or `glue: true` under workshop"));
  }
}
