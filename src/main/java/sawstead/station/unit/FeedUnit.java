package sawstead.station.unit;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import sawstead.brief.Feed;
import sawstead.brief.MiterSlot;
import sawstead.brief.Sheet;
import sawstead.measure.Measured;
import sawstead.solid.Body;
import sawstead.solid.Placement;
import sawstead.solid.Slide;
import sawstead.solid.Solids;
import sawstead.solid.Vec;
import sawstead.station.Contact;
import sawstead.station.DesignException;
import sawstead.station.Draft;
import sawstead.station.Mover;
import sawstead.station.Part;
import sawstead.station.PartKind;
import sawstead.station.Setting;
import sawstead.station.Site;
import sawstead.station.Unit;

/**
 * Boards that are fed over the saw: along their length against the fence, or across it against the
 * miter gauge. A pass begins with the leading edge just before the blade and ends with the trailing
 * edge just behind it; its parameter is the way, mm. Blade, knife and guard are put aside: they are
 * in the cut. For a crosscut the fence is put aside too (common practice, no source).
 */
final class FeedUnit implements Unit {

  /** Sizes of the boards that are tried where the brief names none, mm (no source). */
  /** What is not in the way of a board: it is cut there, and the knife is thinner than the cut. */
  private static final List<String> IN_THE_KERF = List.of("saw/blade", "saw/guard", "saw/knife");

  private static final double LONG_BOARD = 2400;

  private static final double NARROW = 150;
  private static final double ACROSS_LENGTH = 1200;
  private static final double ACROSS_WIDTH = 300;
  private static final double ACROSS_KEEP = 200;

  /** Between blade and edge where a pass begins and ends, mm. */
  private static final double BEFORE = 5;

  private static final Vec AHEAD = new Vec(0, 1, 0);
  private static final String FENCE = "saw/fence-travels";

  private final Site site;

  FeedUnit(Site site) {
    this.site = site;
  }

  /**
   * A board on its way.
   *
   * @param feed what is cut
   * @param named whether the brief names it
   */
  private record Pass(Feed feed, boolean named) {
    String id() {
      return "feed/" + feed.id();
    }
  }

  @Override
  public void place(Draft draft) {}

  @Override
  public void join(Draft draft) {
    for (Pass pass : passes()) {
      if (pass.feed().cut() == Feed.Cut.RIP) {
        rip(draft, pass);
      } else if (!site.saw().slots().isEmpty()) {
        crosscut(draft, pass);
      }
    }
  }

  private List<Pass> passes() {
    Optional<List<Feed>> named = site.brief().feeds();
    if (named.isPresent()) {
      return named.get().stream().map(f -> new Pass(f, true)).toList();
    }
    Sheet sheet = site.brief().stock().get(0);
    double thick = sheet.thickness().nominal();
    return Stream.of(
            usual(
                "full-sheet",
                Feed.Cut.RIP,
                sheet.length().nominal(),
                sheet.width().nominal(),
                thick,
                Optional.empty()),
            usual("long-board", Feed.Cut.RIP, LONG_BOARD, NARROW, thick, Optional.empty()),
            usual(
                "crosscut",
                Feed.Cut.CROSSCUT,
                ACROSS_LENGTH,
                ACROSS_WIDTH,
                thick,
                Optional.of(ACROSS_KEEP)))
        .map(f -> new Pass(f, false))
        .toList();
  }

  private static Feed usual(
      String id, Feed.Cut cut, double length, double width, double thick, Optional<Double> keep) {
    return new Feed(
        id,
        cut,
        Measured.of("feeds", length),
        Measured.of("feeds", width),
        Measured.of("feeds", thick),
        keep.map(k -> Measured.of("feeds", k)));
  }

  private double bladeFront() {
    return 2 * site.saw().blade().arbor().nominal() - GaugeTravel.faceAtEnd(site) - BEFORE;
  }

  private double bladeRear() {
    return GaugeTravel.faceAtEnd(site) + BEFORE;
  }

  private double halfKerf() {
    return site.saw().blade().kerf().nominal() / 2;
  }

  private void rip(Draft draft, Pass pass) {
    Feed feed = pass.feed();
    double furthest = site.saw().fence().right().nominal() - halfKerf();
    double keep =
        feed.keep().map(Measured::nominal).orElse(Math.min(feed.width().nominal() / 2, furthest));
    double face = halfKerf() + keep;
    if (keep > furthest) {
      throw new DesignException(
          "feeds",
          "the fence goes to %s from the blade, and %s wants %s"
              .formatted(draft.length(furthest), feed.id(), draft.length(keep)),
          "write a `keep` of %s or less, or cut it another way".formatted(draft.length(furthest)));
    }
    Map<String, Double> fence = new TreeMap<>();
    List<String> aside = new ArrayList<>(IN_THE_KERF);
    if (draft.hasMover(FENCE)) {
      fence.put(FENCE, face);
    } else {
      aside.addAll(List.of("saw/fence", "saw/fence-clamp"));
    }
    double length = feed.length().nominal();
    Part board =
        board(
            pass,
            new Vec(face - feed.width().nominal(), bladeFront() - length, 0),
            feed.width().nominal(),
            length);
    tell(draft, pass, length, List.of(board), aside, fence);
  }

  private void crosscut(Draft draft, Pass pass) {
    Feed feed = pass.feed();
    double length = feed.length().nominal();
    double width = feed.width().nominal();
    double right = halfKerf() + feed.keep().map(Measured::nominal).orElse(length / 2);
    MiterSlot slot = site.saw().slots().get(0);
    double face = bladeFront() - width;
    List<Part> guests = new ArrayList<>();
    guests.add(board(pass, new Vec(right - length, face, 0), length, width));
    guests.addAll(GaugeTravel.gauge(site, slot, pass.id() + "-", "", face));
    tell(
        draft,
        pass,
        width,
        guests,
        Stream.concat(IN_THE_KERF.stream(), Stream.of("saw/fence", "saw/fence-clamp")).toList(),
        Map.of());
  }

  private Part board(Pass pass, Vec corner, double across, double along) {
    Sheet sheet = site.brief().stock().get(0);
    double thick = pass.feed().thickness().nominal();
    Vec at = new Vec(corner.x(), corner.y(), site.levels().table());
    return new Part(
        PartKind.ENVELOPE,
        Optional.of(sheet.name()),
        across * along * thick * sheet.density().nominal() * 1e-9,
        new Body(pass.id() + "-board", Solids.box(across, along, thick), Placement.at(at)));
  }

  private void tell(
      Draft draft,
      Pass pass,
      double along,
      List<Part> guests,
      List<String> aside,
      Map<String, Double> others) {
    List<Contact> contacts = new ArrayList<>();
    for (Part guest : guests) {
      // A clamp is drawn flush with the table's top, and a board rests on what carries it.
      Stream.of("saw/table", "saw/fence", "saw/fence-clamp")
          .forEach(id -> contacts.add(new Contact(guest.id(), id)));
    }
    double way = along + bladeRear() - bladeFront();
    draft.mover(
        new Mover(
            pass.id(),
            List.of(),
            new Slide(AHEAD, 0, way, 0),
            contacts,
            new Setting(
                Placement.identity(),
                aside.stream().filter(draft::hasBody).toList(),
                others,
                guests)));
  }
}
