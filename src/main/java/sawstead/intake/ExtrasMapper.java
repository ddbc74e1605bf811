package sawstead.intake;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sawstead.brief.AddedCuts;
import sawstead.brief.CutFace;
import sawstead.brief.ExtraPanel;
import sawstead.brief.ExtraScrew;
import sawstead.brief.Place;
import sawstead.brief.Point;
import sawstead.brief.Sheet;
import sawstead.brief.Turn;
import sawstead.brief.TurnAxis;
import sawstead.measure.Measured;

/** Reads the {@code extras} and {@code cuts} sections: what the user adds to the station. */
final class ExtrasMapper {

  private final Section brief;
  private final SheetNames sheets;

  ExtrasMapper(Section brief, SheetNames sheets) {
    this.brief = brief;
    this.sheets = sheets;
  }

  List<ExtraPanel> panels() {
    Duplicates ids = new Duplicates();
    List<ExtraPanel> panels = new ArrayList<>();
    for (Section panel : brief.sections("extras")) {
      String stock = sheets.named(panel, "stock").orElse("");
      Section place = panel.section("place");
      panels.add(
          new ExtraPanel(
              ids.fresh(panel, "id"),
              stock,
              OutlineReader.outline(panel),
              new CutMapper(thickness(stock)).cuts(panel),
              turns(place),
              at(place),
              screws(panel)));
    }
    return panels;
  }

  private Optional<Measured> thickness(String stock) {
    return sheets.find(stock).map(Sheet::thickness);
  }

  static List<Turn> turns(Section place) {
    List<Turn> turns = new ArrayList<>();
    for (Section turn : place.sections("turns")) {
      turns.add(new Turn(turn.word("about", TurnAxis.class, TurnAxis.X), turn.plain("degrees")));
    }
    return turns;
  }

  static Place at(Section place) {
    if (!place.has("at")) {
      return new Place(0, 0, 0);
    }
    List<Measured> row = place.row("at", 3);
    return new Place(row.get(0).nominal(), row.get(1).nominal(), row.get(2).nominal());
  }

  private static List<ExtraScrew> screws(Section panel) {
    List<ExtraScrew> screws = new ArrayList<>();
    for (Section screw : panel.sections("screws")) {
      List<Measured> at = screw.row("at", 2);
      screws.add(
          new ExtraScrew(
              new Point(at.get(0).nominal(), at.get(1).nominal()),
              screw.word("face", CutFace.class),
              GaugeNumber.of(screw),
              screw.plain("length"),
              screw.text("into").orElse("")));
    }
    return screws;
  }

  /**
   * Cuts in panels of the station; the thickness is known here only for panels of the user's own.
   */
  List<AddedCuts> cuts(List<ExtraPanel> panels) {
    List<AddedCuts> added = new ArrayList<>();
    for (Section entry : brief.sections("cuts")) {
      String id = entry.text("panel").orElse("");
      Optional<Measured> thickness =
          panels.stream()
              .filter(panel -> panel.id().equals(id))
              .findFirst()
              .flatMap(panel -> thickness(panel.stock()));
      added.add(new AddedCuts(id, new CutMapper(thickness).cuts(entry)));
    }
    return added;
  }
}
