package sawstead.joinery;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import sawstead.solid.Axis;
import sawstead.solid.Body;
import sawstead.solid.Bore;
import sawstead.solid.Box;
import sawstead.solid.Corner;
import sawstead.solid.Face;
import sawstead.solid.Feature;
import sawstead.solid.Outline;
import sawstead.solid.Panel;
import sawstead.solid.Placement;
import sawstead.solid.Vec;

/**
 * One panel on the bench, at its place in the station, before and between its joints. Immutable.
 * The solid is made only when asked for, so that a station can be rebuilt for its figures alone.
 *
 * @param id path in the station, such as {@code stand/leg-3-face}
 * @param stock name of the sheet it is cut from
 * @param thickness measured, mm
 * @param density kg/m3
 * @param outline in the local (u, v), mm; u runs along the grain
 * @param features in the local frame, w from the back face
 * @param placement from the local frame to the station's
 */
public record Board(
    String id,
    String stock,
    double thickness,
    double density,
    Outline outline,
    List<Feature> features,
    Placement placement) {
  /**
   * Faces, edges and corners nearer than this are one, mm: a tenth of a thousandth of a shaving.
   */
  static final double SAME = 1e-6;

  /** Refuses what has no name, thickness or density. */
  public Board {
    Objects.requireNonNull(id, "id");
    Objects.requireNonNull(stock, "stock");
    Objects.requireNonNull(outline, "outline");
    Objects.requireNonNull(placement, "placement");
    if (!(thickness > 0) || Double.isInfinite(thickness)) {
      throw new JoineryException(id + " needs a thickness of more than 0 mm, found " + thickness);
    }
    if (!(density > 0) || Double.isInfinite(density)) {
      throw new JoineryException(id + " needs a density of more than 0 kg/m3, found " + density);
    }
    features = List.copyOf(features);
  }

  /**
   * A rectangular blank that fills a box.
   *
   * @param box to fill, mm
   * @param through axis of the thickness
   * @param frontTowardsPlus true if the front face looks to growing coordinates along that axis
   * @param grain axis of the face grain; its growing coordinates become u
   */
  public static Board spanning(
      String id,
      String stock,
      double density,
      Box box,
      Axis through,
      boolean frontTowardsPlus,
      Axis grain) {
    if (grain == through) {
      throw new JoineryException(
          "the grain of " + id + " cannot run through its thickness (" + through + ")");
    }
    Vec u = grain.unit();
    Vec w = new Heading(through, frontTowardsPlus).unit();
    Vec v = w.cross(u);
    Vec size = box.size();
    Axis across = Heading.third(grain, through);
    Vec origin = box.low();
    if (!frontTowardsPlus) {
      origin = Heading.with(origin, through, box.high().along(through));
    }
    if (v.along(across) < 0) {
      origin = Heading.with(origin, across, box.high().along(across));
    }
    if (!(size.x() > 0 && size.y() > 0 && size.z() > 0)) {
      throw new JoineryException(id + " would have no material: it is to fill " + size + " mm");
    }
    return new Board(
        id,
        stock,
        size.along(through),
        density,
        Outline.rectangle(0, 0, size.along(grain), size.along(across)),
        List.of(),
        new Placement(u, v, w, origin));
  }

  /** The least station box around the blank: outline and thickness, cuts not counted, mm. */
  public Box box() {
    Box plan = outline.bounds();
    Vec first = placement.apply(plan.low());
    Box box = new Box(first, first);
    for (int corner = 1; corner < 8; corner++) {
      Vec at =
          placement.apply(
              new Vec(
                  ((corner & 1) == 0 ? plan.low() : plan.high()).x(),
                  ((corner & 2) == 0 ? plan.low() : plan.high()).y(),
                  (corner & 4) == 0 ? 0 : thickness));
      box = box.union(new Box(at, at));
    }
    return box;
  }

  /** The panel in its local frame. */
  public Panel panel() {
    return new Panel(outline, thickness, features);
  }

  /** The panel in its place. */
  public Body body() {
    return new Body(id, panel(), placement);
  }

  /** Mass of what is left after all cuts, kg. */
  public double mass() {
    return panel().volumeExact() * 1e-9 * density;
  }

  /** The same board with more features. */
  public Board with(Feature... more) {
    List<Feature> all = new ArrayList<>(features);
    all.addAll(List.of(more));
    return with(outline, all);
  }

  /** Local point of a station point, mm. */
  public Vec local(Vec station) {
    return placement.inverse().apply(station);
  }

  /**
   * The board after an axis-parallel box of air went through it or into it: an opening when it
   * takes the whole thickness, else a recess from the face that it reaches. The cut ends exactly at
   * the board's bounds where the box reaches beyond them.
   *
   * @param air station box, mm
   * @param operation word for a recess: groove, dado, rabbet, recess or relief
   * @throws JoineryException if the box misses the board or reaches neither face, or the board is
   *     not axis-parallel
   */
  public Board cutBox(Box air, String operation) {
    return with(BoxCut.in(this, air, operation));
  }

  /**
   * The board with a hole through it where a station line crosses it.
   *
   * @param at any point of the line
   * @param along direction of the line; the axis of the board's thickness
   * @param diameter mm
   */
  public Board bored(Vec at, Axis along, double diameter) {
    if (along != through()) {
      throw new JoineryException(
          id
              + " is "
              + thickness
              + " mm thick along "
              + through()
              + " and cannot be bored through along "
              + along);
    }
    Vec local = local(at);
    if (!outline.contains(local.x(), local.y())) {
      throw new JoineryException("a bore at " + at + " misses " + id);
    }
    return with(Bore.through(local.x(), local.y(), diameter));
  }

  /**
   * The board made longer or wider at one end. The local frame and all features stay where they
   * are. Only corners on the end line move, so an end with a notch grows beside the notch.
   *
   * @param axis station axis along which it grows, not that of its thickness
   * @param plusEnd true for the end with the greater coordinate
   * @param by mm; negative to make it shorter
   */
  public Board extended(Axis axis, boolean plusEnd, double by) {
    Heading end = localHeading(new Heading(axis, plusEnd));
    if (end.axis() == Axis.Z) {
      throw new JoineryException(id + " cannot be extended along its thickness (" + axis + ")");
    }
    boolean alongU = end.axis() == Axis.X;
    double line = end.sideOf(outline.bounds());
    double step = end.plus() ? by : -by;
    List<Corner> corners = new ArrayList<>();
    for (Corner c : outline.corners()) {
      boolean moves = Math.abs((alongU ? c.u() : c.v()) - line) <= SAME;
      corners.add(
          new Corner(
              c.u() + (moves && alongU ? step : 0),
              c.v() + (moves && !alongU ? step : 0),
              c.bulge()));
    }
    if (by < 0 && -by >= outline.bounds().size().along(end.axis())) {
      throw new JoineryException(id + " is too short to lose " + -by + " mm along " + axis);
    }
    return with(Outline.polygon(corners), features);
  }

  /** Station axis of the thickness. */
  public Axis through() {
    return Heading.of(placement.w()).axis();
  }

  /** Station axis of the face grain. */
  public Axis grain() {
    return Heading.of(placement.u()).axis();
  }

  /** True if its faces and ends are square to the station's axes. */
  public boolean isAxisParallel() {
    return isStraight(placement.u()) && isStraight(placement.v());
  }

  /** True if it is axis-parallel and its outline is one rectangle: what joints can be made on. */
  boolean isSquareBlank() {
    Vec size = outline.bounds().size();
    return isAxisParallel() && Math.abs(size.x() * size.y() - outline.area()) <= SAME * size.x();
  }

  /** The face that looks along a heading; null for an edge. */
  Face faceTowards(Heading heading) {
    double across = placement.w().dot(heading.unit());
    return across > 0.5 ? Face.FRONT : across < -0.5 ? Face.BACK : null;
  }

  /** The local heading of a station heading. */
  Heading localHeading(Heading station) {
    return Heading.of(placement.inverse().turn(station.unit()));
  }

  private Board with(Outline other, List<Feature> cuts) {
    return new Board(id, stock, thickness, density, other, cuts, placement);
  }

  private static boolean isStraight(Vec direction) {
    return Math.abs(direction.x()) + Math.abs(direction.y()) + Math.abs(direction.z()) < 1 + 1e-12;
  }
}
