package sawstead.check;

import java.util.List;
import sawstead.brief.Sheet;
import sawstead.joinery.Board;
import sawstead.solid.Body;
import sawstead.solid.Box;

/**
 * Every panel can be cut from its sheet, once the factory edges are trimmed.
 *
 * <ul>
 *   <li>{@code panel-too-big} (stop): it fits neither way;
 *   <li>{@code panel-across-grain} (mind): it fits only with its grain across the sheet's.
 * </ul>
 *
 * Exact for the rectangle around a panel; a panel that fits only when laid aslant is accused.
 */
final class SheetCheck implements Check {
  @Override
  public Outcome judge(Scene scene) {
    Outcome.Notes notes = new Outcome.Notes();
    for (Board board : scene.station().boards().values()) {
      judge(scene, board, scene.brief().sheet(board.stock()), notes);
    }
    return notes.outcome();
  }

  private static void judge(Scene scene, Board board, Sheet sheet, Outcome.Notes notes) {
    double trim = 2 * sheet.trim().nominal();
    double length = sheet.length().nominal() - trim;
    double width = sheet.width().nominal() - trim;
    double along = sheet.grainAlongLength() ? length : width;
    double across = sheet.grainAlongLength() ? width : length;
    Box plan = board.outline().bounds();
    double u = plan.size().x();
    double v = plan.size().y();
    if (u <= along && v <= across) {
      return;
    }
    Words words = scene.words();
    String says =
        "%s is %s along the grain and %s across it; %s gives %s by %s once it is trimmed"
            .formatted(
                board.id(),
                words.length(u),
                words.length(v),
                sheet.name(),
                words.length(along),
                words.length(across));
    Body body = scene.body(board.id()).orElseThrow();
    if (v <= along && u <= across) {
      notes.add(
          Finding.mind(
              "panel-across-grain",
              List.of(board.id()),
              body.centroid(),
              says + ": it only fits turned, with its grain the weak way",
              "turn the panel's outline on purpose, or take a larger sheet"));
      return;
    }
    notes.add(
        Finding.stop(
            "panel-too-big",
            List.of(board.id()),
            body.centroid(),
            says,
            "take a larger sheet for it (`sheet`), or make the station smaller there"));
  }
}
