package sawstead.check;

import java.util.List;
import sawstead.brief.Alignment;
import sawstead.brief.Brief;
import sawstead.brief.MiterSlot;
import sawstead.brief.Saw;
import sawstead.measure.Measured;

/**
 * Blade and slots before any jig.
 *
 * <ul>
 *   <li>{@code alignment-off} (stop): the blade is not parallel to the slot, by more than {@link
 *       #PARALLEL} over the blade; a sled built on it heels, burns and binds;
 *   <li>{@code alignment-unknown} (mind): a sled is wanted and nothing of this was measured;
 *   <li>{@code slot-uneven} (mind): a slot is wider in one place than in another.
 * </ul>
 *
 * The limits are common practice, no source. Judged as measured; the instrument's band is told.
 */
final class AlignmentCheck implements Check {
  /** Over the blade's length at the table, mm (common practice, no source). */
  static final double PARALLEL = 0.08;

  /** Between the widest and narrowest place of a slot, mm (common practice, no source). */
  static final double EVEN = 0.15;

  @Override
  public Outcome judge(Scene scene) {
    Outcome.Notes notes = new Outcome.Notes();
    Brief brief = scene.brief();
    if (brief.saw().isEmpty()) {
      return notes.outcome();
    }
    if (brief.alignment().isEmpty()) {
      if (!brief.sleds().isEmpty()) {
        notes.add(unknown());
      }
      return notes.outcome();
    }
    Alignment alignment = brief.alignment().get();
    parallel(scene, brief.saw().get(), alignment, notes);
    for (int i = 0; i < alignment.widths().size(); i++) {
      even(scene, i + 1, alignment.widths().get(i), notes);
    }
    return notes.outcome();
  }

  private static Finding unknown() {
    return Finding.general(
        Severity.MIND,
        "alignment-unknown",
        List.of("alignment"),
        "nobody has measured yet whether the blade is parallel to the slot, and every sled figure"
            + " rests on that",
        "before you build: unplug, raise the blade, mark one tooth, measure it to a slot at the front"
            + " and turned to the rear, and write both under `alignment`");
  }

  private static void parallel(Scene scene, Saw saw, Alignment alignment, Outcome.Notes notes) {
    double front = alignment.front().nominal();
    double rear = alignment.rear().nominal();
    double blade = Math.min(saw.blade().diameter().nominal(), 2 * 150.0);
    double off = (rear - front) * blade / alignment.apart().nominal();
    notes.add(
        Margin.length(
            "blade-parallel",
            "blade parallel to the slot, over the blade",
            List.of("saw/blade"),
            PARALLEL,
            Math.abs(off)));
    if (Math.abs(off) <= PARALLEL) {
      return;
    }
    MiterSlot slot = saw.slots().get(alignment.slot() - 1);
    boolean slotIsLeft = slot.at().nominal() < 0;
    boolean towardSlot = off > 0;
    String way = towardSlot == slotIsLeft ? "left" : "right";
    notes.add(
        Finding.general(
            Severity.STOP,
            "alignment-off",
            List.of("saw/blade", "alignment"),
            ("the blade stands %s %s slot %d at the rear than at the front, %s over the blade where"
                    + " %s is the most")
                .formatted(
                    scene.words().length(Math.abs(rear - front)),
                    rear > front ? "farther from" : "nearer to",
                    alignment.slot(),
                    scene.words().length(Math.abs(off)),
                    scene.words().length(PARALLEL)),
            ("align the saw first, as its manual says: shift the arbor's rear %s to the %s,"
                    + " measure again, and only then build sleds")
                .formatted(scene.words().length(Math.abs(rear - front)), way)));
  }

  private static void even(Scene scene, int slot, List<Measured> widths, Outcome.Notes notes) {
    double least = widths.stream().mapToDouble(Measured::nominal).min().orElseThrow();
    double most = widths.stream().mapToDouble(Measured::nominal).max().orElseThrow();
    if (most - least > EVEN) {
      notes.add(
          Finding.general(
              Severity.MIND,
              "slot-uneven",
              List.of("alignment.widths", "saw/table"),
              "slot %d is %s wide at one place and %s at another, %s apart"
                  .formatted(
                      slot,
                      scene.words().length(least),
                      scene.words().length(most),
                      scene.words().length(most - least)),
              "clean and file the tight place, or expect a runner that fits there to rattle elsewhere"));
    }
  }
}
