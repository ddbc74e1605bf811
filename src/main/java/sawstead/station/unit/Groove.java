package sawstead.station.unit;

import java.util.ArrayList;
import java.util.List;
import sawstead.brief.MiterSlot;
import sawstead.brief.OutfeedWish;
import sawstead.brief.Saw;
import sawstead.brief.SawTable;
import sawstead.brief.Side;
import sawstead.solid.Box;
import sawstead.solid.Vec;
import sawstead.station.DesignException;
import sawstead.station.Draft;
import sawstead.station.Remark;
import sawstead.station.Site;

/**
 * A relief groove: where the bar, washer or runner in a miter slot goes on behind the table.
 *
 * <p>Width: the widest of slot and washer plus the side clearance on both sides. Depth: from the
 * outfeed's surface down to the lowest floor that the slot can have, all bands at their worst, plus
 * the floor clearance. It is open toward the saw and reaches as far as a bar does when its head has
 * passed the blade, plus the overrun.
 *
 * @param slot number of the slot from the left, from 1
 * @param x its centre line, mm
 * @param width mm
 * @param depth below the outfeed's surface, mm
 * @param reach y that the bar reaches, overrun included, mm
 */
record Groove(int slot, double x, double width, double depth, double reach) {

  /** How far a bar reaches ahead of what it guides, mm (common practice, no source). */
  static final double BAR_AHEAD = 250;

  /** Wood left between a closed end and a hinge at the rear edge, mm. */
  static final double CLOSED_END = 30;

  /** A groove that ends nearer than this to an edge without a hinge runs out of it, mm. */
  private static final double RUNS_OUT = 40;

  /** The grooves of an outfeed, from left to right. */
  static List<Groove> of(Site site, OutfeedWish wish) {
    Saw saw = site.saw();
    List<Groove> grooves = new ArrayList<>();
    int n = 1;
    for (MiterSlot slot : saw.slots()) {
      double widest = Math.max(slot.width().high(), slot.footWidth().high());
      double width =
          widest + 2 * wish.grooveSide().nominal() + slot.at().plus() + slot.at().minus();
      grooves.add(
          new Groove(n++, slot.at().nominal(), width, depth(site, wish, slot), reach(saw, wish)));
    }
    return grooves;
  }

  private static double depth(Site site, OutfeedWish wish, MiterSlot slot) {
    SawTable table = site.saw().table();
    double lowestRear = Math.min(table.rearLeft().low(), table.rearRight().low());
    double barFloor = lowestRear - site.saw().feet().settling().high() - slot.depth().high();
    double surface = site.levels().lowest() - wish.drop().nominal();
    return surface - barFloor + wish.grooveFloor().nominal();
  }

  private static double reach(Saw saw, OutfeedWish wish) {
    double half =
        SawUnit.halfChord(saw.blade().diameter().nominal() / 2, saw.blade().height().nominal(), 0);
    return saw.blade().arbor().nominal() + half + BAR_AHEAD + wish.overrun().nominal();
  }

  /** Cuts it into the lids that it crosses, and into the leaf when it goes on there. */
  void cut(Draft draft, Site.BoxPlan plan, List<String> lids) {
    double thickness = plan.lid().thickness().nominal();
    if (depth <= 0) {
      return; // The lids lie so low that the bar passes over them.
    }
    if (depth >= thickness - 0.5) {
      throw new DesignException(
          "station.outfeed.drop",
          "the relief groove of slot %d would be %s deep in lids of %s"
              .formatted(slot, draft.length(depth), draft.length(thickness)),
          "choose a thicker sheet for the lids (station.outfeed.lidSheet), a larger drop, or leave the outfeed out");
    }
    for (String lid : lids) {
      Box box = draft.board(lid).box();
      if (x + width / 2 <= box.low().x() || x - width / 2 >= box.high().x()) {
        continue;
      }
      double rear = box.high().y();
      boolean hinged = lids.size() == 1 && plan.hinge() == Side.REAR;
      double end =
          hinged ? Math.min(reach, rear - CLOSED_END) : reach > rear - RUNS_OUT ? rear : reach;
      if (hinged && end < reach) {
        draft.remark(
            Remark.Weight.MIND,
            "groove-short",
            List.of(lid),
            "the relief groove of slot %d ends %s before a bar does when its head has passed the blade"
                .formatted(slot, draft.length(reach - end)),
            "hinge the lid at its side, make the outfeed %s deeper, or use a shorter bar"
                .formatted(draft.length(reach - end)));
      }
      cutTo(draft, lid, box, end);
      if (end == rear && reach > rear && draft.hasBoard("outfeed/leaf")) {
        Box leaf = draft.board("outfeed/leaf").box();
        cutTo(
            draft,
            "outfeed/leaf",
            leaf,
            reach > leaf.high().y() - RUNS_OUT ? leaf.high().y() : reach);
      }
    }
  }

  private void cutTo(Draft draft, String id, Box board, double end) {
    if (end <= board.low().y()) {
      return;
    }
    Box air =
        new Box(
            new Vec(
                Math.max(x - width / 2, board.low().x()),
                board.low().y(),
                board.high().z() - depth),
            new Vec(Math.min(x + width / 2, board.high().x()), end, board.high().z()));
    draft.change(id, b -> b.cutBox(air, "relief"));
  }
}
