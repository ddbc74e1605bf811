package sawstead.station;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import sawstead.brief.Brief;
import sawstead.brief.PocketSide;
import sawstead.brief.Sheet;
import sawstead.joinery.Board;
import sawstead.joinery.Fastener;
import sawstead.joinery.Fixings;
import sawstead.joinery.Joined;
import sawstead.joinery.Joint;
import sawstead.joinery.PocketJoint;
import sawstead.measure.LengthFormat;
import sawstead.solid.Axis;
import sawstead.solid.Body;
import sawstead.solid.Box;
import sawstead.solid.Feature;
import sawstead.solid.Placement;
import sawstead.solid.Solid;
import sawstead.solid.Vec;

/**
 * The sheet of paper that the units of a station draw on, one after the other; {@link #finish}
 * makes it a {@link Station}. Ids are unique: a second body of the same id is refused.
 */
public final class Draft {

  private final Brief brief;
  private final Map<String, Board> boards = new LinkedHashMap<>();
  private final Map<String, Part> bodies = new LinkedHashMap<>();
  private final List<Contact> contacts = new ArrayList<>();
  private final List<Mover> movers = new ArrayList<>();
  private final List<Step> steps = new ArrayList<>();
  private final List<Support> supports = new ArrayList<>();
  private final List<Remark> remarks = new ArrayList<>();
  private final List<Shortfall> shortfalls = new ArrayList<>();
  private final Set<String> turnedPockets;
  private Fixings fixings;

  /** What a joint between two boards lacks, in words. */
  private record Shortfall(String a, String b, String says) {}

  Draft(Brief brief, Fixings fixings, Set<String> turnedPockets) {
    this.brief = brief;
    this.turnedPockets = Set.copyOf(turnedPockets);
    this.fixings = fixings;
  }

  /** Adds a rectangular blank of a sheet that fills a box; its grain runs along {@code grain}. */
  public void panel(
      String id, Sheet sheet, Box box, Axis through, boolean frontTowardsPlus, Axis grain) {
    board(
        Board.spanning(
            id, sheet.name(), sheet.density().nominal(), box, through, frontTowardsPlus, grain));
  }

  /** Adds a board. */
  public void board(Board board) {
    demandNew(board.id());
    boards.put(board.id(), board);
  }

  /** The board of that id as it is by now. */
  public Board board(String id) {
    Board board = boards.get(id);
    if (board == null) {
      throw new IllegalArgumentException("no panel " + id);
    }
    return board;
  }

  /** Whether there is a board of that id. */
  public boolean hasBoard(String id) {
    return boards.containsKey(id);
  }

  /** All boards as they are by now. */
  public List<Board> boards() {
    return List.copyOf(boards.values());
  }

  /** Changes a board: another feature, another outline; never another id. */
  public void change(String id, UnaryOperator<Board> change) {
    boards.put(id, change.apply(board(id)));
  }

  /** Cuts a feature into a board. */
  public void cut(String id, Feature feature) {
    change(id, b -> b.with(feature));
  }

  /** Adds a body that is not cut from a sheet. */
  public void body(PartKind kind, String id, Solid solid, Placement placement, double mass) {
    demandNew(id);
    bodies.put(id, new Part(kind, Optional.empty(), mass, new Body(id, solid, placement)));
  }

  /** Adds an upright box that something takes up. */
  public void envelope(String id, Box box, double mass) {
    box(PartKind.ENVELOPE, id, box, mass);
  }

  /** Adds an upright box of that kind. */
  public void box(PartKind kind, String id, Box box, double mass) {
    demandNew(id);
    bodies.put(id, Part.box(kind, id, box, mass));
  }

  /** All bodies that are not panels, as they are by now. */
  public List<Part> bodies() {
    return List.copyOf(bodies.values());
  }

  /** What there is to screw with, and the screws set so far. */
  public Fixings fixings() {
    return fixings;
  }

  /** Screws that are set from now on keep out of this box. */
  public void keepClear(Box box) {
    fixings = fixings.keepingClear(List.of(box));
  }

  /** Adds a fastener that no joint makes: a bolt through the saw's foot, a caster's screw. */
  public void fasten(List<Fastener> more) {
    fixings = fixings.and(more);
  }

  /** Joins two boards: both may change, screws are set, a hinge becomes bodies. */
  public Joined join(Joint joint, String a, String b) {
    return join(joint, a, b, List.of());
  }

  /** Joins two boards with screws that keep out of these boxes, which other joints may use. */
  public Joined join(Joint joint, String a, String b, List<Box> clear) {
    return join(joint, a, b, clear, lack -> true);
  }

  /**
   * As {@link #join(Joint, String, String, List)}, but with fewer fasteners than usual where there
   * is no room for more: the caller counts them over several joints.
   */
  public Joined joinWhereRoom(Joint joint, String a, String b, List<Box> clear) {
    return join(joint, a, b, clear, lack -> lack != Lack.SOME && lack != Lack.ALL);
  }

  private Joined join(Joint joint, String a, String b, List<Box> clear, Predicate<Lack> told) {
    Joined joined = sided(joint, a, b).join(board(a), board(b), fixings.keepingClear(clear));
    boards.put(a, joined.a());
    boards.put(b, joined.b());
    fixings = fixings.and(joined.fasteners());
    for (Body body : joined.bodies()) {
      body(PartKind.HARDWARE, body.id(), body.solid(), body.placement(), body.volume() * STEEL);
      touch(body.id(), a);
      touch(body.id(), b);
    }
    for (String shortfall : joined.shortfalls()) {
      if (told.test(Lack.of(shortfall))) {
        shortfalls.add(new Shortfall(a, b, shortfall));
      }
    }
    touch(a, b);
    return joined;
  }

  /** The joint with its pockets in the face that is wished, or that has to be. */
  private Joint sided(Joint joint, String a, String b) {
    boolean outside =
        brief.station().filter(s -> s.pockets() == PocketSide.OUTSIDE).isPresent()
            || turnedPockets.contains(pair(a, b));
    return outside && joint instanceof PocketJoint pocket ? pocket.turned() : joint;
  }

  /** The name of a joint between two boards, whichever is named first. */
  public static String pair(String a, String b) {
    return a.compareTo(b) < 0 ? a + " " + b : b + " " + a;
  }

  /** Density of steel, kg per cubic mm. */
  private static final double STEEL = 7.85e-6;

  /** A length in mm as the user reads it, with its unit. */
  public String length(double millimetres) {
    return LengthFormat.of(brief.units()).near(millimetres);
  }

  /** Declares that two bodies are meant to touch. */
  public void touch(String a, String b) {
    contacts.add(new Contact(a, b));
  }

  /** Whether there is a body of that id that is no panel. */
  public boolean hasBody(String id) {
    return bodies.containsKey(id);
  }

  /** The box around a panel or another body as it is by now. */
  public Box boxOf(String id) {
    return hasBoard(id) ? board(id).box() : bodies.get(id).body().box();
  }

  /** Whether a motion of that id was added by now. */
  public boolean hasMover(String id) {
    return movers.stream().anyMatch(m -> m.id().equals(id));
  }

  /** Adds a motion. */
  public void mover(Mover mover) {
    movers.add(mover);
  }

  /** The motions added so far. */
  public List<Mover> movers() {
    return List.copyOf(movers);
  }

  /** Adds the next step of the build. */
  public void step(List<String> places, String fixing, Vec direction, List<String> cautions) {
    steps.add(new Step(steps.size() + 1, places, fixing, direction, cautions));
  }

  /** Adds cautions to the step that places a body. */
  public void caution(String placed, List<String> more) {
    steps.replaceAll(
        s -> {
          if (!s.places().contains(placed)) {
            return s;
          }
          List<String> all = new ArrayList<>(s.cautions());
          all.addAll(more);
          return new Step(s.number(), s.places(), s.fixing(), s.direction(), all);
        });
  }

  /** Adds a point at which the station stands on the floor. */
  public void support(Support support) {
    supports.add(support);
  }

  /** Adds a remark. */
  public void remark(
      Remark.Weight weight, String rule, List<String> about, String says, String remedy) {
    remarks.add(new Remark(weight, rule, about, says, remedy));
  }

  /** The finished station. */
  Station finish(Optional<Site> site, Map<String, Figure> figures) {
    remarkShortfalls();
    Map<String, Part> parts = new LinkedHashMap<>(bodies);
    for (Board board : boards.values()) {
      parts.put(
          board.id(),
          new Part(PartKind.PANEL, Optional.of(board.stock()), board.mass(), board.body()));
    }
    return new Station(
        brief,
        site,
        parts,
        boards,
        fixings.present(),
        contacts.stream().distinct().toList(),
        movers,
        steps,
        figures,
        supports,
        remarks);
  }

  /** One remark for all joints that lack the same thing, so that the list stays readable. */
  private void remarkShortfalls() {
    Map<String, List<Shortfall>> byWords = new LinkedHashMap<>();
    for (Shortfall shortfall : shortfalls) {
      int colon = shortfall.says().lastIndexOf(": ");
      String words = colon < 0 ? shortfall.says() : shortfall.says().substring(0, colon);
      byWords.computeIfAbsent(words, k -> new ArrayList<>()).add(shortfall);
    }
    byWords.forEach(
        (words, all) -> {
          Lack lack = Lack.of(words);
          remark(
              lack.weight,
              lack.rule,
              all.stream().flatMap(s -> Stream.of(s.a(), s.b())).distinct().toList(),
              words + (all.size() > 1 ? ", at %d joints".formatted(all.size()) : ""),
              lack.remedy);
        });
  }

  private void demandNew(String id) {
    if (boards.containsKey(id) || bodies.containsKey(id)) {
      throw new DesignException(
          "extras",
          "there are two bodies named " + id,
          "give each panel of your own a name of its own");
    }
  }
}
