package sawstead.station.unit;

import java.util.ArrayList;
import java.util.List;
import sawstead.brief.Brief;
import sawstead.brief.Cut;
import sawstead.brief.CutFace;
import sawstead.brief.ExtraPanel;
import sawstead.brief.ExtraScrew;
import sawstead.brief.Sheet;
import sawstead.brief.Turn;
import sawstead.joinery.Board;
import sawstead.joinery.Fastener;
import sawstead.joinery.FastenerKind;
import sawstead.joinery.ScrewGauge;
import sawstead.joinery.Wood;
import sawstead.solid.Axis;
import sawstead.solid.Feature;
import sawstead.solid.Placement;
import sawstead.solid.SolidException;
import sawstead.solid.Vec;
import sawstead.station.DesignException;
import sawstead.station.Draft;
import sawstead.station.Unit;

/** Panels of the user's own, straight from the brief, with the screws that they name. */
final class ExtraUnit implements Unit {

  private final Brief brief;

  ExtraUnit(Brief brief) {
    this.brief = brief;
  }

  @Override
  public void place(Draft draft) {
    for (int i = 0; i < brief.extras().size(); i++) {
      draft.board(board(brief, brief.extras().get(i), "extras[" + i + "]"));
    }
  }

  /**
   * A panel as the user wrote it.
   *
   * @param path where in the brief it stands
   * @throws DesignException if it is no solid
   */
  static Board board(Brief brief, ExtraPanel extra, String path) {
    try {
      return board(brief, extra);
    } catch (SolidException e) {
      throw new DesignException(
          path, extra.id() + ": " + e.getMessage(), "correct its outline or its cuts");
    }
  }

  private static Board board(Brief brief, ExtraPanel extra) {
    Sheet sheet = brief.sheet(extra.stock());
    List<Feature> features = new ArrayList<>();
    for (Cut cut : extra.cuts()) {
      features.add(Cuts.feature(cut));
    }
    Placement placement = Placement.identity();
    for (Turn turn : extra.turns()) {
      placement = placement.turned(Axis.valueOf(turn.about().name()), turn.degrees());
    }
    placement = placement.moved(extra.at().x(), extra.at().y(), extra.at().z());
    Board board =
        new Board(
            extra.id(),
            sheet.name(),
            sheet.thickness().nominal(),
            sheet.density().nominal(),
            Cuts.outline(extra.outline()),
            features,
            placement);
    board.panel().volume();
    return board;
  }

  @Override
  public void join(Draft draft) {
    for (int i = 0; i < brief.extras().size(); i++) {
      ExtraPanel extra = brief.extras().get(i);
      List<Fastener> screws = new ArrayList<>();
      for (ExtraScrew screw : extra.screws()) {
        if (!draft.hasBoard(screw.into())) {
          throw new DesignException(
              "extras[" + i + "].screws",
              "there is no panel " + screw.into() + " for the thread to hold in",
              "write the id of a panel, as the report lists them");
        }
        screws.add(screw(draft.board(extra.id()), screw, screws.size() + 1));
      }
      draft.fasten(screws);
    }
  }

  private static Fastener screw(Board board, ExtraScrew screw, int number) {
    boolean front = screw.face() == CutFace.FRONT;
    ScrewGauge gauge = new ScrewGauge(screw.gauge());
    return new Fastener(
        board.id() + "/screw-" + number,
        FastenerKind.WOOD_SCREW,
        List.of(board.id(), screw.into()),
        board
            .placement()
            .apply(new Vec(screw.at().u(), screw.at().v(), front ? board.thickness() : 0)),
        board.placement().turn(new Vec(0, 0, front ? -1 : 1)),
        screw.length(),
        gauge.shank(),
        gauge.pilot(Wood.SOFT),
        gauge.head(),
        false,
        "own");
  }
}
