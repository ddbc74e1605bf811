package sawstead.check;

import java.util.List;
import java.util.Optional;
import sawstead.station.Figure;

/**
 * {@code storage-reach} (mind): the nearest push stick is farther from the middle of the table's
 * front edge, where a hand is when it is needed, than the operator's arm reaches.
 *
 * <p>The limit is the thumb-tip reach of a small woman (REF-ERG-05, 5th percentile, 674 mm):
 * whoever reaches that far need not step. A straight line, so on the safe side only by the bend of
 * an arm.
 */
final class StorageCheck implements Check {
  /** REF-ERG-05, women, P5, mm. */
  static final double REACH = 674;

  @Override
  public Outcome judge(Scene scene) {
    Outcome.Notes notes = new Outcome.Notes();
    Optional<Figure> reach =
        Optional.ofNullable(scene.station().figures().get("pushStickReach"))
            .filter(f -> scene.station().site().isPresent());
    if (reach.isPresent()) {
      double far = reach.get().nominal();
      List<String> about = List.of("storage/push-stick-1");
      if (far > REACH) {
        notes.add(
            Finding.general(
                Severity.MIND,
                "storage-reach",
                about,
                "the nearest push stick is %s from the table's front edge before the blade: more than an arm of %s"
                    .formatted(scene.words().length(far), scene.words().length(REACH)),
                "hang the rack at the other side (storage.side), or keep one stick on the fence"));
      } else {
        notes.add(Margin.length("push-stick-reach", "arm to the push stick", about, REACH, far));
      }
    }
    return notes.outcome();
  }
}
