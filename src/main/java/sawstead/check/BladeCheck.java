package sawstead.check;

import java.util.List;
import sawstead.brief.Brief;
import sawstead.brief.Knife;
import sawstead.brief.KnifeKind;
import sawstead.brief.OwnedBlade;
import sawstead.brief.Saw;

/**
 * Every blade of the brief with the saw and its knife.
 *
 * <ul>
 *   <li>{@code blade-too-big} (stop): larger than the saw carries;
 *   <li>{@code knife-wide} (stop): the knife is as thick as the kerf or thicker and stops the board
 *       (REF-SAF-04);
 *   <li>{@code knife-thin} (mind): no thicker than the plate, so that the kerf may close on the
 *       blade (REF-SAF-04);
 *   <li>{@code knife-off} (mind): what stands above the crown comes off for a sled;
 *   <li>{@code kerf-other} (note): another blade than the mounted one widens the kerf of a sled, or
 *       leaves it wide.
 * </ul>
 *
 * Judged as measured.
 */
final class BladeCheck implements Check {
  /** Two kerfs that differ by less are one, mm. */
  private static final double SAME_KERF = 0.1;

  @Override
  public Outcome judge(Scene scene) {
    Outcome.Notes notes = new Outcome.Notes();
    Brief brief = scene.brief();
    for (OwnedBlade blade : brief.blades()) {
      Saw saw = brief.saw().orElseThrow();
      size(scene, saw, blade, notes);
      saw.knife().ifPresent(knife -> knife(scene, blade, knife, notes));
      kerf(scene, blade, notes);
    }
    brief
        .saw()
        .flatMap(Saw::knife)
        .filter(k -> k.belowCrown().nominal() < 0 && !brief.sleds().isEmpty())
        .ifPresent(k -> notes.add(off(scene, k)));
    return notes.outcome();
  }

  private static void size(Scene scene, Saw saw, OwnedBlade blade, Outcome.Notes notes) {
    double over = blade.diameter().nominal() - saw.blade().diameter().nominal();
    if (over > 0.5) {
      notes.add(
          Finding.general(
              Severity.STOP,
              "blade-too-big",
              List.of("blades." + blade.id(), "saw/blade"),
              blade.id()
                  + " measures "
                  + scene.words().length(blade.diameter().nominal())
                  + " across, more than the saw carries, "
                  + scene.words().length(saw.blade().diameter().nominal()),
              "use a smaller blade; the saw's plate and manual rule"));
    }
  }

  private static void knife(Scene scene, OwnedBlade blade, Knife knife, Outcome.Notes notes) {
    double thick = knife.thickness().nominal();
    String says =
        "the %s is %s thick, %s has a plate of %s and a kerf of %s"
            .formatted(
                knife.kind() == KnifeKind.RIVING ? "riving knife" : "splitter",
                scene.words().length(thick),
                blade.id(),
                scene.words().length(blade.plate().nominal()),
                scene.words().length(blade.kerf().nominal()));
    List<String> about = List.of("blades." + blade.id(), "saw.knife");
    if (thick >= blade.kerf().nominal()) {
      notes.add(
          Finding.general(
              Severity.STOP,
              "knife-wide",
              about,
              says + ": the board jams on it",
              "use this blade only with a thinner knife made for the saw"));
    } else if (thick <= blade.plate().nominal()) {
      notes.add(
          Finding.general(
              Severity.MIND,
              "knife-thin",
              about,
              says + ": the kerf can close on the blade",
              "use a knife made for this blade, thicker than its plate"));
    }
  }

  private static void kerf(Scene scene, OwnedBlade blade, Outcome.Notes notes) {
    Brief brief = scene.brief();
    OwnedBlade mounted = brief.mounted().orElseThrow();
    double wider = blade.kerf().nominal() - mounted.kerf().nominal();
    if (brief.sleds().isEmpty() || Math.abs(wider) < SAME_KERF) {
      return;
    }
    notes.add(
        Finding.general(
            Severity.NOTE,
            "kerf-other",
            List.of("blades." + blade.id()),
            (wider > 0
                    ? "%s cuts %s wider than the mounted %s: it widens the kerf of a sled for good"
                    : "%s cuts %s narrower than the mounted %s: a sled's kerf does not back its cut")
                .formatted(blade.id(), scene.words().length(Math.abs(wider)), mounted.id()),
            "keep a sled for one blade, or fit a fresh strip at the kerf"));
  }

  private static Finding off(Scene scene, Knife knife) {
    return Finding.general(
        Severity.MIND,
        "knife-off",
        List.of("saw.knife"),
        (knife.kind() == KnifeKind.RIVING ? "the riving knife" : "the splitter")
            + " stands "
            + scene.words().length(-knife.belowCrown().nominal())
            + " above the crown, where fence and bridge of a sled have to pass",
        "take it off, unplugged, for the sled only, and put it back on at once afterwards; a riving"
            + " knife at or below the crown stays on");
  }
}
