package sawstead.check;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import sawstead.solid.Body;
import sawstead.solid.Box;
import sawstead.solid.Vec;
import sawstead.station.Part;
import sawstead.station.PartKind;
import sawstead.station.Situation;

/**
 * While a board is fed something carries it: its balance point stays within the hull of the patches
 * of table, wings, outfeed, leaf and stand-ins under it. {@code feed-unsupported}: mind for a board
 * that the brief names, note for the boards that are tried anyway.
 *
 * <p>Exact for boards and tops that are rectangles seen from above. What lies up to {@link #LOW}
 * below the table carries, since boards bow.
 */
final class FeedCheck implements Check {
  /** How far below the table's top a surface may lie and still carry, mm (no source). */
  static final double LOW = 5;

  /** Rounding between two heights that are meant to be the same, mm. */
  private static final double SAME = 1e-3;

  @Override
  public Outcome judge(Scene scene) {
    Outcome.Notes notes = new Outcome.Notes();
    for (Passage passage : scene.passages()) {
      if (passage.mover().id().startsWith("feed/")) {
        judge(scene, passage, notes);
      }
    }
    return notes.outcome();
  }

  private static void judge(Scene scene, Passage passage, Outcome.Notes notes) {
    Part board = passage.mover().setting().guests().get(0);
    Situation situation = Situation.of(scene.station(), passage.mover());
    Box start = board.body().box();
    double under = start.low().z();
    List<Box> carriers =
        situation.standing().stream()
            .filter(b -> carries(scene, b.id()))
            .map(Body::box)
            .filter(b -> b.high().z() <= under + SAME && b.high().z() >= under - LOW)
            .toList();
    double way = passage.mover().motion().to();
    List<Carrying.Stretch> open = new Carrying(start, carriers).unsupported(way);
    if (!open.isEmpty()) {
      notes.add(finding(scene, passage, board, open, way));
    }
  }

  /** Panels, the saw's table and stand-ins; not rails, clamps and boxes around machines. */
  private static boolean carries(Scene scene, String id) {
    Part part = scene.station().part(id).orElseThrow();
    return part.kind() == PartKind.PANEL || id.equals("saw/table") || part.isRoom();
  }

  private static Finding finding(
      Scene scene, Passage passage, Part board, List<Carrying.Stretch> open, double way) {
    Words words = scene.words();
    Box start = board.body().box();
    Carrying.Stretch first = open.get(0);
    // Where it is furthest from what carries it: at the end that the stretch shares with the pass.
    boolean begins = first.from() == 0;
    double at = begins ? 0 : first.to() >= way ? way : (first.from() + first.to()) / 2;
    Vec balance = start.centre();
    Vec spot = new Vec(balance.x(), balance.y() + at, start.low().z());
    StringBuilder says = new StringBuilder();
    says.append("nothing carries the balance point of ")
        .append(passage.mover().id())
        .append(" (")
        .append(words.length(start.size().x()))
        .append(" x ")
        .append(words.length(start.size().y()))
        .append(String.format(Locale.ROOT, ", %.0f kg) ", board.mass()));
    for (int i = 0; i < open.size(); i++) {
      says.append(i == 0 ? "" : " and ")
          .append("from ")
          .append(words.length(open.get(i).from()))
          .append(" to ")
          .append(words.length(open.get(i).to()));
    }
    says.append(" of its way of ").append(words.length(way));
    return new Finding(
        scene.brief().feeds().isPresent() ? Severity.MIND : Severity.NOTE,
        "feed-unsupported",
        List.of(passage.mover().id(), board.id()),
        Optional.of(spot),
        says.toString(),
        "set a stand-in at "
            + words.place(spot)
            + " (room.standIns), or have a helper there, or make the piece smaller first");
  }
}
