package sawstead.preview.scene;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import sawstead.check.Inspector;
import sawstead.intake.BriefReader;
import sawstead.outside.OutsideTool;
import sawstead.solid.Body;
import sawstead.solid.Placement;
import sawstead.solid.Slide;
import sawstead.solid.Solids;
import sawstead.solid.Vec;
import sawstead.station.Mover;
import sawstead.station.Part;
import sawstead.station.PartKind;
import sawstead.station.Setting;
import sawstead.station.Station;
import sawstead.station.Step;
import sawstead.station.unit.Units;

class ArrangementTest {
  private final Station station = Demo.station("lantern-alley");

  @Test
  void rest_leavesEverythingWhereTheStationHasIt() {
    for (Part part : station.parts().values()) {
      assertEquals(
          Placement.identity(), Arrangement.REST.of(part, station).orElseThrow(), part.id());
    }
  }

  @Test
  void moving_movesWhatTheMoverMovesAndNothingElse() {
    Mover mover = station.movers().get(0);
    Arrangement open = Arrangement.REST.moving(mover.id(), mover.motion().to());
    for (Part part : station.parts().values()) {
      Placement expected =
          mover.moves().contains(part.id())
              ? mover.motion().at(mover.motion().to())
              : Placement.identity();
      assertEquals(expected, open.of(part, station).orElseThrow(), part.id());
    }
  }

  @Test
  void built_showsTheStepsDoneAndTheOneOnItsWay() {
    Step second = station.steps().get(1);
    BuildOrder order = BuildOrder.of(station);
    Arrangement halfway = Arrangement.REST.built(1.5);
    for (Part part : station.parts().values()) {
      int number = order.bringing(part.id()).map(BuildOrder.Coming::number).orElse(0);
      assertEquals(number < 3, halfway.of(part, station).isPresent(), part.id());
    }
    Part coming = station.part(second.places().get(0)).orElseThrow();
    Vec way = halfway.of(coming, station).orElseThrow().origin();
    assertTrue(way.dot(second.direction()) < 0, "it still has to come along its direction");
    assertEquals(0, way.cross(second.direction()).length(), 1e-9);
  }

  @Test
  void spread_movesPartsApart() {
    Arrangement wide = Arrangement.REST.spread(1);
    Part base = station.part("stand/base").orElseThrow();
    Part top = station.part("stand/top").orElseThrow();
    double before = top.body().box().centre().distance(base.body().box().centre());
    double after =
        top.body()
            .moved(wide.of(top, station).orElseThrow())
            .box()
            .centre()
            .distance(base.body().moved(wide.of(base, station).orElseThrow()).box().centre());
    assertTrue(after > 1.3 * before, before + " to " + after);
    assertFalse(wide.equals(Arrangement.REST));
  }

  @Test
  void moving_aMotionWithASetting_showsItUntilAnotherMoves() {
    Part board =
        new Part(
            PartKind.ENVELOPE,
            Optional.of("ply-18"),
            1,
            new Body("feed/board", Solids.box(300, 200, 18), Placement.at(new Vec(0, -900, 1000))));
    Setting setting =
        new Setting(
            Placement.identity(),
            List.of("saw/guard"),
            Map.of("saw/fence-travels", 300.0),
            List.of(board));
    Mover feed =
        new Mover("feed", List.of(), new Slide(new Vec(0, 1, 0), 0, 900, 0), List.of(), setting);
    Station more = with(feed);
    Part guard = more.part("saw/guard").orElseThrow();
    Part fence = more.part("saw/fence").orElseThrow();
    Arrangement fed = Arrangement.REST.moving("feed", 400);
    assertEquals(Placement.at(new Vec(0, 400, 0)), fed.of(board, more).orElseThrow());
    assertTrue(fed.of(guard, more).isEmpty());
    double way = 300 - more.mover("saw/fence-travels").orElseThrow().motion().rest();
    assertEquals(Placement.at(new Vec(way, 0, 0)), fed.of(fence, more).orElseThrow());
    Arrangement then = fed.moving("outfeed/lid-left-opens", 20);
    assertTrue(then.of(board, more).isEmpty());
    assertTrue(then.of(guard, more).isPresent());
    assertEquals(Placement.identity(), then.of(fence, more).orElseThrow());
    assertTrue(Arrangement.REST.of(board, more).isEmpty());
  }

  private Station with(Mover mover) {
    List<Mover> movers = new ArrayList<>(station.movers());
    movers.add(mover);
    return new Station(
        station.brief(),
        station.site(),
        station.parts(),
        station.boards(),
        station.fasteners(),
        station.contacts(),
        movers,
        station.steps(),
        station.figures(),
        station.supports(),
        station.remarks());
  }

  /** Each run of a vac that is tipped out begins where the tape left it in the one before. */
  @Test
  void moving_ofAVacThatIsTippedOut_goesOnWhereTheTurnEnded() throws Exception {
    Path file = OutsideTool.project().resolve("src/test/resources/cases/exits/tipped-vac.yaml");
    Station tipped = Inspector.inspect(Units.station(BriefReader.read(file))).station();
    Part vac = tipped.part("vac/body").orElseThrow();
    double end = tipped.mover("vac/body-comes-out-1").orElseThrow().motion().to();
    double[] turned =
        Arrangement.REST
            .moving("vac/body-comes-out-1", end)
            .of(vac, tipped)
            .orElseThrow()
            .columnMajor();
    double[] goesOn =
        Arrangement.REST
            .moving("vac/body-comes-out-1", end)
            .moving("vac/body-comes-out-2", 0)
            .of(vac, tipped)
            .orElseThrow()
            .columnMajor();
    assertArrayEquals(turned, goesOn, 1e-9);
    assertEquals(Math.cos(Math.toRadians(15)), turned[0], 1e-9);
  }
}
