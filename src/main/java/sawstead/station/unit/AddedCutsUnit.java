package sawstead.station.unit;

import java.util.List;
import sawstead.brief.AddedCuts;
import sawstead.brief.Cut;
import sawstead.solid.SolidException;
import sawstead.station.DesignException;
import sawstead.station.Draft;
import sawstead.station.Unit;

/**
 * Cuts that the user adds to panels of the station. They come last and move no screw out of their
 * way: a groove that meets one is a finding.
 */
final class AddedCutsUnit implements Unit {

  private final List<AddedCuts> added;

  AddedCutsUnit(List<AddedCuts> added) {
    this.added = added;
  }

  @Override
  public void place(Draft draft) {}

  @Override
  public void join(Draft draft) {
    for (int i = 0; i < added.size(); i++) {
      AddedCuts cuts = added.get(i);
      String path = "cuts[" + i + "]";
      if (!draft.hasBoard(cuts.panel())) {
        throw new DesignException(
            path + ".panel",
            "there is no panel " + cuts.panel(),
            "write the id of a panel, as the report lists them");
      }
      try {
        for (Cut cut : cuts.cuts()) {
          draft.cut(cuts.panel(), Cuts.feature(cut));
        }
        draft.board(cuts.panel()).panel().volume();
      } catch (SolidException e) {
        throw new DesignException(path, cuts.panel() + ": " + e.getMessage(), "correct the cut");
      }
    }
  }
}
