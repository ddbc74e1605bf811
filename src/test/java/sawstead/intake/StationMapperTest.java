package sawstead.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import sawstead.brief.JointKind;
import sawstead.brief.Mount;
import sawstead.brief.OutfeedWish;
import sawstead.brief.PortUse;
import sawstead.brief.PortWish;
import sawstead.brief.Side;
import sawstead.brief.SideWish;
import sawstead.brief.StandWish;
import sawstead.brief.StationWish;

/** The wishes of a station, with those of its stand, wings, outfeed and ports. */
class StationMapperTest {

  private static StationWish station(String... lines) {
    return Briefs.with(lines).station().orElseThrow();
  }

  @Test
  void station_leftOut_isTheUsualOne() {
    StationWish wish = Briefs.read(Briefs.LEAST).station().orElseThrow();
    assertTrue(wish.workingHeight().isEmpty() && wish.legLength().isEmpty());
    assertEquals("birch-18", wish.sheet());
    assertEquals(0.05, wish.contact().nominal());
    assertEquals(Side.LEFT, wish.leftWing().orElseThrow().opening());
    assertEquals(Side.RIGHT, wish.rightWing().orElseThrow().opening());
    assertEquals("storage", wish.rightWing().orElseThrow().purpose());
    OutfeedWish outfeed = wish.outfeed().orElseThrow();
    assertEquals(Mount.ON_TOP, outfeed.mount());
    assertEquals(1.5, outfeed.drop().nominal());
    assertEquals(1, outfeed.lids());
    assertEquals(Optional.empty(), outfeed.hinge());
    assertEquals(JointKind.SCREW, outfeed.joint());
  }

  @Test
  void station_withoutASaw_isEmpty() {
    String stockOnly = Briefs.LEAST.replaceAll("(?s)saw:.*stock:", "stock:");
    String extra = "extras: [{id: a, stock: birch-18, outline: [[0, 0], [9, 0], [9, 9]]}]\n";
    assertEquals(Optional.empty(), Briefs.read(stockOnly + extra).station());
  }

  @Test
  void units_toldNone_areNone() {
    StationWish wish = station("station: {wings: {left: none}, outfeed: none}");
    assertTrue(wish.leftWing().isEmpty());
    assertTrue(wish.rightWing().isPresent());
    assertTrue(wish.outfeed().isEmpty());
  }

  @Test
  void stand_isOpenOnTheVacsSide() {
    String vac = "vac: {width: 300, depth: 300, height: 400}";
    StandWish front = station(vac).stand();
    assertEquals(Optional.of(Side.FRONT), front.vacSide());
    assertEquals(SideWish.OPEN, front.frontSide());
    assertEquals(SideWish.STRETCHERS, front.leftSide());
    StandWish left = station(vac, "station: {stand: {vacSide: left}}").stand();
    assertEquals(SideWish.OPEN, left.leftSide());
    assertEquals(SideWish.STRETCHERS, left.frontSide());
    StandWish none = Briefs.read(Briefs.LEAST).station().orElseThrow().stand();
    assertEquals(Optional.empty(), none.vacSide());
    assertEquals(SideWish.STRETCHERS, none.frontSide());
  }

  @Test
  void stand_thatJustCarriesTheFeet_isAccepted() {
    StandWish stand =
        station("station: {stand: {width: 540, depth: 390, left: 250, front: 40}}").stand();
    assertEquals(540, stand.width().orElseThrow().nominal());
  }

  @Test
  void ports_areReadInOrder() {
    List<PortWish> ports =
        station(
                "station:",
                "  ports:",
                "    - {id: cord, through: [stand/top, outfeed/floor], at: [1, 2, 3], use: plug}",
                "    - {id: lamp, through: [stand/top], at: [4, 5, 6], use: free, diameter: 20}")
            .ports();
    assertEquals(List.of("stand/top", "outfeed/floor"), ports.get(0).through());
    assertEquals(PortUse.PLUG, ports.get(0).use());
    assertEquals(Optional.empty(), ports.get(0).diameter());
    assertEquals(6, ports.get(1).z());
    assertEquals(20, ports.get(1).diameter().orElseThrow().nominal());
  }
}
