package sawstead.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import sawstead.solid.Box;
import sawstead.solid.Recess;
import sawstead.station.DesignException;
import sawstead.station.Station;

/** The router of models/flawed/router-meets-vac.yaml, sound again, and at its thresholds. */
class RouterCheckTest {
  private static final double NEAR = 0.05;

  private static String sound() {
    try {
      return Files.readString(Path.of("models/flawed/router-meets-vac.yaml"))
          .replace("motorLength: 440", "motorLength: 300");
    } catch (java.io.IOException e) {
      throw new AssertionError(e);
    }
  }

  private static String mm(double value) {
    return String.format(Locale.ROOT, "%.4f mm", value);
  }

  private static List<String> grave(String text) {
    return SledBriefs.grave(SledBriefs.ask(new RouterCheck(), text));
  }

  private static Box box(Station station, String id) {
    return station.part(id).orElseThrow().body().box();
  }

  @Test
  void router_asDesigned_isFine() {
    assertEquals(List.of(), grave(sound()));
    assertEquals(List.of(), SledBriefs.stops(sound()));
  }

  /** REF-MEC-01 and REF-MEC-02: midspan load, k_b 1/48, k_s 1/4; E 7500, G 400 N/mm2. */
  @Test
  void sag_isThatOfTwoStripsAndTwoRibs() {
    // Front and rear uprights of 17.8 in a wing as deep as the table between its margins.
    Station station = SledBriefs.station(sound());
    Box top = box(station, "wing-right/top");
    double span = top.size().y() - 2 * 17.8;
    double strips = 380 - 17.8 - 235 - 1;
    double load = 100 + 4 * 9.80665;
    double inertia = strips * Math.pow(17.8, 3) / 12 + 2 * 17.8 * Math.pow(60, 3) / 12;
    double area = 5.0 / 6 * (strips * 17.8 + 2 * 17.8 * 60);
    double sag = load * Math.pow(span, 3) / 48 / (7500 * inertia) + load * span / 4 / (400 * area);
    assertEquals(sag, station.figures().get("routerSag").nominal(), 1e-9);
  }

  @Test
  void opening_isThePlateWithItsGap_roundedAtItsCorners() {
    Station station = SledBriefs.station(sound());
    Recess recess =
        station.boards().get("wing-right/top").features().stream()
            .filter(f -> f instanceof Recess)
            .map(f -> (Recess) f)
            .findFirst()
            .orElseThrow();
    assertEquals(299.0 * 236 - (4 - Math.PI) * 100, recess.outline().area(), 1e-6);
    assertEquals(9.5, recess.depth(), 0);
  }

  @Test
  void withoutRibs_theTopGivesWay() {
    assertEquals(
        List.of("mind router-sag"),
        grave(sound().replace("routerTable:\n", "routerTable:\n  rib: 0\n")));
  }

  @Test
  void wing_oneTwentiethTooNarrow_hasNoRoomForThePlate() {
    double enough = 235 + 1 + 60 + 17.8;
    String narrow = sound().replace("width: 380", "width: " + mm(enough - NEAR));
    String wide = sound().replace("width: 380", "width: " + mm(enough + NEAR));
    assertTrue(SledBriefs.stops(narrow).contains("router-room"), narrow);
    assertTrue(!SledBriefs.stops(wide).contains("router-room"), wide);
  }

  @Test
  void vac_oneTwentiethTooHigh_meetsTheMotor() {
    String text = sound().replace("motorLength: 300", "motorLength: 440");
    Station station = SledBriefs.station(text);
    double fits = box(station, "router/motor").low().z() - box(station, "stand/base").high().z();
    double deepest = fits + station.brief().station().orElseThrow().contact().nominal();
    assertEquals(List.of(), grave(text.replace("height: 430", "height: " + mm(deepest - NEAR))));
    assertEquals(
        List.of("stop router-vac"),
        grave(text.replace("height: 430", "height: " + mm(deepest + NEAR))));
  }

  @Test
  void fence_passesTheBitByAShaving_andIsToldWhenItStaysAway() {
    Passage works =
        Passages.of(SledBriefs.station(sound()), 0.05).stream()
            .filter(p -> p.mover().id().equals("router/fence-works"))
            .findFirst()
            .orElseThrow();
    assertTrue(works.firstContact().isEmpty(), works.toString());
    assertEquals(1, works.leastClearance().orElseThrow(), 0.03);
    Station station = SledBriefs.station(sound() + "");
    double bit = box(station, "router/bit").centre().x();
    // Its width of 50 and a facing of 17.8 besides, up to the bit's radius.
    double reach = bit - 20 - 17.8 - station.brief().saw().orElseThrow().fence().width().nominal();
    String at = sound().replace("routerTable:\n", "routerTable:\n  x: " + mm(bit) + "\n");
    assertEquals(
        List.of("mind router-fence-short"),
        grave(at.replace("right: 500", "right: " + mm(reach - NEAR))));
    assertEquals(List.of(), grave(at.replace("right: 500", "right: " + mm(reach + NEAR))));
  }

  /** The box may be as high as the motor leaves room for, and not a twentieth more. */
  @Test
  void drawerUnderTheRouter_thatMeetsItsMotor_isRefusedInWords() {
    String text = sound().replace("motorLength: 300", "motorLength: 200");
    Station without = SledBriefs.station(text);
    double motor = box(without, "router/motor").low().z();
    double room = motor - box(without, "wing-right/bottom").high().z() - 10;
    assertTrue(room > 40, "room " + room);
    String drawer = text + "\ndrawers: [{id: bits, in: wing-right, height: ";
    assertEquals(List.of(), SledBriefs.stops(drawer + mm(room - NEAR) + "}]\n"));
    for (String high : List.of(mm(room + NEAR), "unknown")) {
      DesignException refused =
          assertThrows(DesignException.class, () -> SledBriefs.station(drawer + high + "}]\n"));
      assertTrue(refused.getMessage().contains("same wing"), refused.getMessage());
      assertEquals("drawers[0].in", refused.path());
      // There is no left wing that it could go to.
      assertTrue(refused.remedy().startsWith("write `in: case`"), refused.remedy());
      String told = refused.remedy().replaceAll("(?s).*height: ([0-9.]+ mm)`.*", "$1");
      assertEquals(List.of(), SledBriefs.stops(drawer + told + "}]\n"), told);
    }
  }
}
