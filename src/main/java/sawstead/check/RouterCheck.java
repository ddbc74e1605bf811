package sawstead.check;

import java.util.List;
import java.util.Optional;
import sawstead.brief.Fence;
import sawstead.brief.RouterTable;
import sawstead.brief.Side;
import sawstead.solid.Body;
import sawstead.solid.Box;
import sawstead.solid.Slide;
import sawstead.solid.Vec;
import sawstead.station.Figure;
import sawstead.station.Site;

/**
 * A router in a wing.
 *
 * <ul>
 *   <li>{@code router-vac} (stop): on the vac's way out by its side the vac meets the router;
 *   <li>{@code router-fence-short} (mind): the saw's fence does not come to the bit;
 *   <li>{@code router-bit-up} (mind): at its lowest the bit still stands above the plate, where the
 *       fence and every board pass;
 *   <li>{@code router-low} (mind): the wing lies so low that work over table and plate rocks;
 *   <li>{@code router-sag} (mind): what is left of the top beside the plate gives way.
 * </ul>
 *
 * The first is certified in the sense of the kernel's sweep; the limits are common practice, no
 * source. That the motor passes the wing at all heights, and the fence the bit, are motions.
 */
final class RouterCheck implements Check {
  /** Most that the top may give way, and lie below the table, mm. */
  static final double SAG = 0.5;

  static final double LOW = 3;

  /** How far the vac is drawn out, mm. */
  private static final double OUT = 1500;

  @Override
  public Outcome judge(Scene scene) {
    Outcome.Notes notes = new Outcome.Notes();
    Optional<RouterTable> table = scene.brief().routerTable();
    Optional<Body> bit = scene.body("router/bit");
    if (table.isPresent() && bit.isPresent()) {
      Site site = scene.station().site().orElseThrow();
      vac(scene, site, notes);
      fence(scene, site, table.get(), bit.get().box(), notes);
      level(scene, site, table.get(), bit.get().box(), notes);
      sag(scene, notes);
    }
    return notes.outcome();
  }

  private static void vac(Scene scene, Site site, Outcome.Notes notes) {
    Optional<Side> side = site.wish().stand().vacSide();
    Optional<Body> vac = scene.body("vac/body");
    if (side.isEmpty() || vac.isEmpty()) {
      return;
    }
    Vec way =
        switch (side.get()) {
          case LEFT -> new Vec(-1, 0, 0);
          case RIGHT -> new Vec(1, 0, 0);
          case REAR -> new Vec(0, 1, 0);
          default -> new Vec(0, -1, 0);
        };
    List<Body> router =
        scene.bodies().stream()
            .filter(b -> b.id().startsWith("router/") && !b.id().equals("router/facing"))
            .toList();
    Passages.sweep(
            new Slide(way, 0, OUT, 0), List.of(vac.get()), router, List.of(), scene.contact())
        .firstContact()
        .ifPresent(
            c -> {
              double deep =
                  vac.get().box().high().z() - scene.body(c.with()).orElseThrow().box().low().z();
              notes.add(
                  Finding.stop(
                      "router-vac",
                      List.of(c.with(), "vac/body"),
                      c.point(),
                      "the vac meets "
                          + c.with()
                          + " on its way out by the "
                          + side.get().word()
                          + ", after "
                          + scene.words().length(c.at()),
                      "hang the router in the other wing, take the vac out elsewhere"
                          + " (station.stand.vacSide), or choose a motor that hangs "
                          + scene.words().atLeast(deep)
                          + " less deep"));
            });
  }

  private static void fence(
      Scene scene, Site site, RouterTable table, Box bit, Outcome.Notes notes) {
    Fence fence = site.saw().fence();
    boolean right = table.side() == Side.RIGHT;
    double reaches = (right ? fence.right() : fence.left()).nominal() + fence.width().nominal();
    double needs = Math.abs(bit.centre().x()) - table.bit().nominal() / 2;
    double facing = scene.brief().sheet(table.sheet()).thickness().nominal();
    List<String> about = List.of("router/bit", "saw/fence");
    if (reaches + facing < needs) {
      notes.add(
          Finding.general(
              Severity.MIND,
              "router-fence-short",
              about,
              "the saw's fence, with its facing, stays "
                  + scene.words().length(needs - reaches - facing)
                  + " away from the bit at the end of its travel",
              "set the bit nearer to the blade (routerTable.x), or clamp a board across the wing"));
    } else {
      notes.add(
          Margin.length(
              "router-fence", "travel of the fence to the bit", about, reaches + facing, needs));
    }
  }

  private static void level(
      Scene scene, Site site, RouterTable table, Box bit, Outcome.Notes notes) {
    double surface = site.wing(table.side()).orElseThrow().surface();
    double drop = site.levels().table() - surface;
    if (drop > LOW) {
      notes.add(
          Finding.general(
              Severity.MIND,
              "router-low",
              List.of("router/plate"),
              "the router's plate lies " + scene.words().length(drop) + " below the saw's table",
              "raise the wing, or rout on the wing alone with a fence of its own"));
    }
    double up = bit.high().z() - surface;
    if (up > scene.contact()) {
      notes.add(
          Finding.general(
              Severity.MIND,
              "router-bit-up",
              List.of("router/bit"),
              "with the motor at its lowest the bit still stands "
                  + scene.words().length(up)
                  + " above the plate",
              "take the bit out before you use the saw: fence and boards pass there"));
    }
  }

  private static void sag(Scene scene, Outcome.Notes notes) {
    Figure sag = scene.station().figures().get("routerSag");
    List<String> about = List.of("router/plate");
    if (sag.high() > SAG) {
      notes.add(
          Finding.general(
              Severity.MIND,
              "router-sag",
              about,
              "what is left of the wing's top beside the plate gives way by up to "
                  + scene.words().length(sag.high())
                  + " under router and work",
              "screw a rib under the top beside the opening, make the wing wider, or take a thicker"
                  + " sheet"));
    } else {
      notes.add(
          Margin.length(
              "router-sag", "stiffness beside the router's plate", about, SAG, sag.high()));
    }
  }
}
