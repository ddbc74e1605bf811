package sawstead.station.unit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import sawstead.brief.MiterSlot;
import sawstead.solid.Body;
import sawstead.solid.Box;
import sawstead.solid.Placement;
import sawstead.solid.Slide;
import sawstead.solid.Solids;
import sawstead.solid.Vec;
import sawstead.station.Contact;
import sawstead.station.Draft;
import sawstead.station.Mover;
import sawstead.station.Part;
import sawstead.station.PartKind;
import sawstead.station.Setting;
import sawstead.station.Site;
import sawstead.station.Unit;

/**
 * A miter gauge in each slot: bar, head, and the washer of a T slot, from where the bar enters at
 * the front of the table until the head's face has passed the blade. The bar fills its slot; it
 * reaches {@link Groove#BAR_AHEAD} ahead of the face. The parameter is the place of the face, y.
 *
 * <p>The washer has a motion of its own with the table put aside: the T under the table's top, in
 * which it runs, is not in the table's solid.
 */
final class GaugeTravel implements Unit {

  /** How far the bar goes on behind the face, mm (common practice, no source). */
  private static final double BAR_BEHIND = 150;

  /** Head: width, depth, height, mm (common practice, no source). */
  private static final double HEAD_WIDTH = 150;

  private static final double HEAD_DEPTH = 40;
  private static final double HEAD_HEIGHT = 60;

  /** Between the head and the plane of the blade, mm: guard and knife pass. */
  private static final double FROM_BLADE = 25;

  /** Diameter over which a washer reaches along its bar, mm, before its front edge. */
  private static final double WASHER_FROM_TIP = 20;

  private static final Vec AHEAD = new Vec(0, 1, 0);

  private final Site site;

  GaugeTravel(Site site) {
    this.site = site;
  }

  @Override
  public void place(Draft draft) {}

  @Override
  public void join(Draft draft) {
    List<String> aside = Stream.of("saw/fence", "saw/fence-clamp").filter(draft::hasBody).toList();
    for (int n = 1; n <= site.saw().slots().size(); n++) {
      MiterSlot slot = site.saw().slots().get(n - 1);
      double from = site.table().front() - Groove.BAR_AHEAD;
      double to = faceAtEnd(site);
      List<Part> gauge = gauge(site, slot, "gauge/", "-" + n, from);
      draft.mover(
          new Mover(
              "gauge/slot-" + n + "-travels",
              List.of(),
              new Slide(AHEAD, from, to, from),
              contacts(gauge),
              Setting.aside(aside).with(gauge)));
      Optional<Part> washer = washer(site, slot, n, from);
      List<String> more = new ArrayList<>(aside);
      more.add("saw/table");
      washer.ifPresent(
          w ->
              draft.mover(
                  new Mover(
                      w.id() + "-travels",
                      List.of(),
                      new Slide(AHEAD, from, to, from),
                      List.of(),
                      Setting.aside(more).with(List.of(w)))));
    }
  }

  /** Where the head's face is when its job is done: behind the blade, y. */
  static double faceAtEnd(Site site) {
    double half =
        SawUnit.halfChord(
            site.saw().blade().diameter().nominal() / 2, site.saw().blade().height().nominal(), 0);
    return site.saw().blade().arbor().nominal() + half;
  }

  /** Bar and head of a gauge whose face is at that y. */
  static List<Part> gauge(Site site, MiterSlot slot, String prefix, String suffix, double face) {
    double top = site.levels().table();
    double x = slot.at().nominal();
    double half = slot.width().nominal() / 2;
    double width = Math.max(half, Math.min(HEAD_WIDTH / 2, Math.abs(x) - FROM_BLADE));
    return List.of(
        part(
            prefix + "bar" + suffix,
            new Vec(x - half, face - BAR_BEHIND, top - slot.depth().nominal()),
            new Vec(x + half, face + Groove.BAR_AHEAD, top)),
        part(
            prefix + "head" + suffix,
            new Vec(x - width, face - HEAD_DEPTH, top),
            new Vec(x + width, face, top + HEAD_HEIGHT)));
  }

  static List<Contact> contacts(List<Part> gauge) {
    return gauge.stream().map(p -> new Contact(p.id(), "saw/table")).toList();
  }

  private static Optional<Part> washer(Site site, MiterSlot slot, int n, double face) {
    if (slot.footHeight().nominal() <= 0 || slot.footWidth().nominal() <= 0) {
      return Optional.empty();
    }
    double radius = slot.footWidth().nominal() / 2;
    double y = face + Groove.BAR_AHEAD - WASHER_FROM_TIP - radius;
    double floor = site.levels().table() - slot.depth().nominal();
    return Optional.of(
        new Part(
            PartKind.ENVELOPE,
            Optional.empty(),
            0,
            new Body(
                "gauge/washer-" + n,
                Solids.cylinder(2 * radius, slot.footHeight().nominal()),
                Placement.at(new Vec(slot.at().nominal(), y, floor)))));
  }

  private static Part part(String id, Vec low, Vec high) {
    return Part.box(PartKind.ENVELOPE, id, new Box(low, high), 0);
  }
}
