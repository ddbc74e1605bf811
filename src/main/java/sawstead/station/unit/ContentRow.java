package sawstead.station.unit;

import java.util.List;
import sawstead.brief.Content;
import sawstead.station.Area;
import sawstead.station.Draft;
import sawstead.station.Remark;

/** Things kept in a cubby, side by side from the left, upright on its floor. */
final class ContentRow {

  /** Air between things and round them, mm (common practice, no source). */
  private static final double AIR = 5;

  private final String unit;
  private final List<Content> contents;

  ContentRow(String unit, List<Content> contents) {
    this.unit = unit;
    this.contents = contents;
  }

  /**
   * Places them in the clear space between two heights; says what is missing when they do not fit.
   */
  void place(Draft draft, Area inside, double floor, double ceiling) {
    double x = inside.left() + AIR;
    for (Content content : contents) {
      String id = unit + "/" + content.id();
      double width = content.width().nominal();
      double depth = content.depth().nominal();
      double height = content.height().nominal();
      double front = inside.front() + Math.max(0, Math.min(AIR, (inside.depth() - depth) / 2));
      draft.envelope(
          id,
          new Area(x, x + width, front, front + depth).between(floor, floor + height),
          content.mass().nominal());
      demandRoom(draft, id, "deep", depth - inside.depth());
      demandRoom(draft, id, "wide", x + width - inside.right());
      demandRoom(draft, id, "high", height - (ceiling - floor));
      x += width + AIR;
    }
  }

  private void demandRoom(Draft draft, String id, String way, double missing) {
    if (missing > 0) {
      draft.remark(
          Remark.Weight.STOP,
          "contents-room",
          List.of(id),
          "%s is %s too %s for its place".formatted(id, draft.length(missing), way),
          "make the cubby %s larger that way, or keep it elsewhere"
              .formatted(draft.length(Math.ceil(missing))));
    }
  }
}
