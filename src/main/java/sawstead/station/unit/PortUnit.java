package sawstead.station.unit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sawstead.brief.DustPort;
import sawstead.brief.PortUse;
import sawstead.brief.PortWish;
import sawstead.brief.Side;
import sawstead.brief.Vac;
import sawstead.joinery.Board;
import sawstead.measure.Measured;
import sawstead.solid.Axis;
import sawstead.solid.Box;
import sawstead.solid.Placement;
import sawstead.solid.Solids;
import sawstead.solid.Vec;
import sawstead.station.Area;
import sawstead.station.DesignException;
import sawstead.station.Draft;
import sawstead.station.Gauge;
import sawstead.station.Levels;
import sawstead.station.Part;
import sawstead.station.PartKind;
import sawstead.station.PortSizes;
import sawstead.station.Remark;
import sawstead.station.Site;
import sawstead.station.Unit;

/**
 * Holes for hose and cord through the stand's top, as large as cuff and plug need and no smaller
 * than the next hole saw at hand, as near to port and cord as legs, stretchers, walls and feet
 * allow; and the ports that the user asks for, bored in line through every panel named.
 */
final class PortUnit implements Unit {

  /** Grid of the search for a free place, mm. */
  private static final double GRID = 2;

  /** How far the hose stands out of its hole, mm. */
  private static final double HOSE_OUT = 40;

  private final Site site;
  private final List<Passing> passings = new ArrayList<>();

  /** What goes through a hole, and which panels it passes. */
  private record Passing(PlugTravel travel, List<String> panels) {}

  PortUnit(Site site) {
    this.site = site;
  }

  @Override
  public void place(Draft draft) {}

  @Override
  public void cut(Draft draft) {
    List<Area> taken = new ArrayList<>(obstacles(draft));
    Optional<Vac> vac = site.brief().vac();
    if (vac.isPresent()) {
      double diameter = snapped(draft, "hose", PortSizes.hoseNeeds(site.brief()).orElseThrow());
      Vec wanted =
          site.saw()
              .dust()
              .map(this::below)
              .orElse(new Vec(site.body().centreX(), site.body().rear() + diameter, 0));
      bore(draft, "hose", wanted, diameter, taken)
          .ifPresent(
              at -> {
                placeHose(draft, vac.get(), at);
                passes("hose", at, Axis.Z, cuff(vac.get()), false, List.of(StandUnit.TOP));
              });
    }
    double plug = snapped(draft, "cord", PortSizes.plugNeeds(site.saw()));
    bore(draft, "cord", cordSpot(plug), plug, taken)
        .ifPresent(at -> passes("cord", at, Axis.Z, plugDiagonal(), true, List.of(StandUnit.TOP)));
    for (int i = 0; i < site.wish().ports().size(); i++) {
      cutWish(draft, site.wish().ports().get(i), "station.ports[" + i + "]");
    }
  }

  private static double cuff(Vac vac) {
    return vac.hose().cuff().nominal();
  }

  private double plugDiagonal() {
    return site.saw().cord().plug().nominal();
  }

  private void passes(
      String port, Vec at, Axis axis, double across, boolean plug, List<String> panels) {
    String id = "ports/" + port + (plug ? "-plug" : "-cuff");
    // Larger by the contact tolerance all round: the verdict turns at the plug's own size.
    double drawn = across + 2 * site.wish().contact().nominal();
    passings.add(new Passing(new PlugTravel(id, at, axis, drawn, plug), panels));
  }

  /** The motions come last: by then every panel has all its holes. */
  @Override
  public void join(Draft draft) {
    for (Passing passing : passings) {
      passing
          .travel()
          .tell(
              draft,
              passing.panels().stream().map(p -> draft.board(p).box()).toList(),
              List.of("vac/hose"));
    }
  }

  /** The point of the top under the mouth of the dust port. */
  private Vec below(DustPort port) {
    double along = mm(port.x());
    double out = mm(port.out()) / 2;
    return switch (port.side()) {
      case REAR -> new Vec(along, site.body().rear() + out, 0);
      case FRONT -> new Vec(along, site.body().front() - out, 0);
      case LEFT -> new Vec(site.body().left() - out, along, 0);
      case RIGHT -> new Vec(site.body().right() + out, along, 0);
      case BELOW -> new Vec(along, mm(port.below()), 0);
    };
  }

  private Vec cordSpot(double diameter) {
    Area body = site.body();
    return switch (site.saw().cord().side()) {
      case FRONT -> new Vec(body.centreX(), body.front() - diameter, 0);
      case LEFT -> new Vec(body.left() - diameter, body.centreY(), 0);
      case RIGHT -> new Vec(body.right() + diameter, body.centreY(), 0);
      default -> new Vec(body.right() - diameter, body.rear() + diameter, 0);
    };
  }

  /** The smallest hole saw at hand that is at least that wide. */
  private double snapped(Draft draft, String what, double least) {
    Optional<Double> saw = PortSizes.holeSaw(site.brief(), least);
    if (saw.isEmpty()) {
      draft.remark(
          Remark.Weight.MIND,
          "no-hole-saw",
          List.of(StandUnit.TOP),
          "no hole saw at hand is %s or wider, which the %s needs"
              .formatted(draft.length(least), what),
          "cut the hole with a jigsaw, or buy a hole saw of that size");
    }
    return PortSizes.hole(site.brief(), least);
  }

  /** What stands on the top or under it, or is bored through it already, seen from above. */
  private List<Area> obstacles(Draft draft) {
    Box top = draft.board(StandUnit.TOP).box();
    List<Area> areas = new ArrayList<>();
    List<Box> boxes = new ArrayList<>();
    for (Board board : draft.boards()) {
      if (!board.id().equals(StandUnit.TOP)) {
        boxes.add(board.box());
      }
    }
    for (Part part : draft.bodies()) {
      if (part.id().startsWith("saw/") && !isDustBelow(part.id())) {
        boxes.add(part.body().box());
      }
    }
    for (Box box : boxes) {
      if (box.low().z() < top.high().z() + HOSE_OUT + 1 && box.high().z() > top.low().z() - 1) {
        areas.add(new Area(box.low().x(), box.high().x(), box.low().y(), box.high().y()));
      }
    }
    return areas;
  }

  private boolean isDustBelow(String id) {
    return id.equals("saw/dust-port") && site.saw().dust().orElseThrow().side() == Side.BELOW;
  }

  private Optional<Vec> bore(
      Draft draft, String what, Vec wanted, double diameter, List<Area> taken) {
    Optional<Vec> at = nearest(wanted, diameter / 2 + PortSizes.MARGIN, taken);
    if (at.isEmpty()) {
      draft.remark(
          Remark.Weight.STOP,
          "port-room",
          List.of(StandUnit.TOP),
          "there is no room in the stand's top for the %s's hole of %s"
              .formatted(what, draft.length(diameter)),
          "make the stand deeper, or the outfeed less deep");
      return at;
    }
    Vec spot = at.get();
    draft.change(StandUnit.TOP, b -> b.bored(spot, Axis.Z, diameter));
    double r = diameter / 2;
    taken.add(new Area(spot.x() - r, spot.x() + r, spot.y() - r, spot.y() + r));
    return at;
  }

  /**
   * The free point nearest to the wanted one: a disc of that radius there meets nothing and stays
   * inside the top.
   */
  private Optional<Vec> nearest(Vec wanted, double radius, List<Area> taken) {
    Area top = site.stand();
    Vec best = null;
    double least = Double.POSITIVE_INFINITY;
    for (double x = top.left() + radius; x <= top.right() - radius; x += GRID) {
      for (double y = top.front() + radius; y <= top.rear() - radius; y += GRID) {
        double away = square(x - wanted.x()) + square(y - wanted.y());
        if (away < least && isFree(x, y, radius, taken)) {
          least = away;
          best = new Vec(x, y, site.levels().sawFeet());
        }
      }
    }
    return Optional.ofNullable(best);
  }

  private static boolean isFree(double x, double y, double radius, List<Area> taken) {
    for (Area area : taken) {
      double dx = Math.max(0, Math.max(area.left() - x, x - area.right()));
      double dy = Math.max(0, Math.max(area.front() - y, y - area.rear()));
      if (square(dx) + square(dy) < square(radius)) {
        return false;
      }
    }
    return true;
  }

  private static double square(double length) {
    return length * length;
  }

  /** The hose where it passes the top, upright. */
  private void placeHose(Draft draft, Vac vac, Vec at) {
    double vacTop = site.levels().baseTop() + Levels.height(vac, Gauge.nominal());
    double bottom =
        Math.max(site.levels().topUnder() - HOSE_OUT, Math.min(vacTop, site.levels().topUnder()));
    double top = site.levels().sawFeet() + HOSE_OUT;
    draft.body(
        PartKind.ENVELOPE,
        "vac/hose",
        Solids.cylinder(mm(vac.hose().diameter()), top - bottom),
        Placement.at(new Vec(at.x(), at.y(), bottom)),
        0);
  }

  private void cutWish(Draft draft, PortWish port, String path) {
    double diameter =
        port.diameter()
            .map(Measured::nominal)
            .orElseGet(
                () ->
                    snapped(
                        draft,
                        port.id(),
                        port.use() == PortUse.HOSE
                            ? PortSizes.hoseNeeds(site.brief()).orElseThrow(() -> noHose(path))
                            : PortSizes.plugNeeds(site.saw())));
    Vec at = new Vec(port.x(), port.y(), port.z());
    Axis axis = Axis.Z;
    for (String panel : port.through()) {
      if (!draft.hasBoard(panel)) {
        throw new DesignException(
            path + ".through",
            "there is no panel " + panel,
            "write the id of a panel, as the report lists them");
      }
      Axis along = draft.board(panel).through();
      axis = along;
      draft.change(panel, b -> b.bored(at, along, diameter));
    }
    switch (port.use()) {
      case PLUG -> passes(port.id(), at, axis, plugDiagonal(), true, port.through());
      case HOSE ->
          passes(
              port.id(),
              at,
              axis,
              cuff(site.brief().vac().orElseThrow(() -> noHose(path))),
              false,
              port.through());
      case FREE -> {}
    }
  }

  private static DesignException noHose(String path) {
    return new DesignException(
        path + ".use",
        "a port for a hose needs a vac in the brief",
        "describe the vac, or give a diameter");
  }

  private static double mm(Measured measured) {
    return measured.nominal();
  }
}
