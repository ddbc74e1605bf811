package sawstead.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import sawstead.brief.AddedCuts;
import sawstead.brief.Brief;
import sawstead.brief.CircleCut;
import sawstead.brief.CutFace;
import sawstead.brief.ExtraPanel;
import sawstead.brief.ExtraScrew;
import sawstead.brief.GrooveCut;
import sawstead.brief.OpeningCut;
import sawstead.brief.Place;
import sawstead.brief.Point;
import sawstead.brief.RecessCut;
import sawstead.brief.Turn;
import sawstead.brief.TurnAxis;

/** The example of the design (architecture, "Extras"), key by key. */
class ExtrasMapperTest {

  private static final String EXTRAS =
      """
      extras:
        - id: jig-rack
          stock: birch-18
          outline: [[0,0], [600,0], [600,300], [0,300]]
          cuts:
            - {circle:  {at: [100,100], diameter: 64}}
            - {opening: {outline: [[1,1], [2,1], [2,2]]}}
            - {groove:  {from: [0,150], to: [600,150], width: 20, depth: 9, face: front}}
            - {recess:  {outline: [[1,1], [2,1], [2,2]], depth: 6, face: back}}
          place: {at: [0, 900, 500], turns: [{about: x, degrees: 90}, {about: z, degrees: 30}]}
          screws: [{at: [50, 60], gauge: 8, length: 32, into: stand/top}]
      """;

  @Test
  void panels_ofTheExample_areReadAsTheyStand() {
    List<Point> small = List.of(new Point(1, 1), new Point(2, 1), new Point(2, 2));
    ExtraPanel expected =
        new ExtraPanel(
            "jig-rack",
            "birch-18",
            List.of(new Point(0, 0), new Point(600, 0), new Point(600, 300), new Point(0, 300)),
            List.of(
                new CircleCut(new Point(100, 100), 64, Optional.empty(), CutFace.FRONT),
                new OpeningCut(small),
                new GrooveCut(new Point(0, 150), new Point(600, 150), 20, 9, CutFace.FRONT, false),
                new RecessCut(small, 6, CutFace.BACK)),
            List.of(new Turn(TurnAxis.X, 90), new Turn(TurnAxis.Z, 30)),
            new Place(0, 900, 500),
            List.of(new ExtraScrew(new Point(50, 60), CutFace.FRONT, 8, 32, "stand/top")));
    assertEquals(List.of(expected), Briefs.with(EXTRAS).extras());
  }

  @Test
  void panels_withoutAPlace_lieAtTheOrigin() {
    Brief brief =
        Briefs.with("extras: [{id: a/b-2, stock: birch-18, outline: [[0, 0], [9, 0], [9, 9]]}]");
    assertEquals(new Place(0, 0, 0), brief.extras().get(0).at());
    assertEquals(List.of(), brief.extras().get(0).turns());
  }

  @Test
  void outline_thatRepeatsItsFirstCorner_isClosedAlready() {
    Brief brief =
        Briefs.with(
            "extras: [{id: a, stock: birch-18, outline: [[0, 0], [9, 0], [9, 9], [0, 0]]}]");
    assertEquals(3, brief.extras().get(0).outline().size());
  }

  @Test
  void cuts_inPanelsOfTheStation_areReadWithoutTheirThickness() {
    Brief brief =
        Briefs.with(
            "cuts: [{panel: stand/top, cuts: [{circle: {at: [9, 9], diameter: 4, depth: 19}}]}]");
    AddedCuts cuts = brief.cuts().get(0);
    assertEquals("stand/top", cuts.panel());
    assertEquals(
        List.of(new CircleCut(new Point(9, 9), 4, Optional.of(19.0), CutFace.FRONT)), cuts.cuts());
  }
}
