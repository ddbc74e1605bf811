package sawstead.check;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import sawstead.joinery.Fastener;
import sawstead.solid.Body;
import sawstead.solid.Chord;
import sawstead.solid.Overlap;
import sawstead.solid.Placement;
import sawstead.solid.Solids;
import sawstead.solid.Vec;
import sawstead.station.PartKind;

/**
 * How one fastener lies in the finished parts that it joins. Parameters run along its axis from the
 * seat of the head (0) to the tip (its length), mm.
 *
 * <p>Works on the bodies as they will be cut, not on the joint that set the fastener, so that a cut
 * that came later is seen.
 */
final class Bite {
  private final Fastener fastener;
  private final List<Body> joined;
  private final List<Body> panels;

  Bite(Scene scene, Fastener fastener) {
    this.fastener = fastener;
    joined = fastener.joins().stream().flatMap(id -> scene.body(id).stream()).toList();
    panels =
        joined.stream()
            .filter(b -> scene.station().part(b.id()).orElseThrow().kind() == PartKind.PANEL)
            .toList();
  }

  Fastener fastener() {
    return fastener;
  }

  /** The panels that it joins, as it meets them. */
  List<Body> panels() {
    return panels;
  }

  /** The body that its tip is meant to hold in. */
  Optional<Body> holder() {
    return joined.isEmpty() ? Optional.empty() : Optional.of(joined.get(joined.size() - 1));
  }

  /** Where its line runs in material of the parts that it joins, sorted and disjoint. */
  List<Chord> material() {
    List<Chord> all = new ArrayList<>();
    for (Body body : joined) {
      all.addAll(Chord.along(body, fastener.at(), fastener.axis()));
    }
    all.sort(Comparator.comparingDouble(Chord::from));
    List<Chord> merged = new ArrayList<>();
    for (Chord chord : all) {
      Chord last = merged.isEmpty() ? null : merged.get(merged.size() - 1);
      if (last != null && chord.from() <= last.to() + TOUCH) {
        merged.set(merged.size() - 1, new Chord(last.from(), Math.max(last.to(), chord.to())));
      } else {
        merged.add(chord);
      }
    }
    return merged;
  }

  /** Parts this near to each other touch, mm: the rounding of our own mates, and some. */
  private static final double TOUCH = 0.01;

  /**
   * Material beyond the tip in line with it, mm; negative by how much the tip stands out. Minus the
   * whole length when the line meets no material at all.
   */
  double tipCover() {
    double length = fastener.length();
    double end = 0;
    for (Chord chord : material()) {
      if (chord.from() <= length + 1e-9) {
        if (chord.to() >= length) {
          return chord.to() - length;
        }
        end = Math.max(end, chord.to());
      }
    }
    return end - length;
  }

  /** How much of it, tip counted, sits in the last of its parts, mm. */
  double hold() {
    return holder().map(b -> inside(b, fastener.length())).orElse(0.0);
  }

  /** How much could sit there if it were as long as one likes, mm. */
  double room() {
    return holder().map(b -> inside(b, Double.POSITIVE_INFINITY)).orElse(0.0);
  }

  private double inside(Body body, double length) {
    return Chord.along(body, fastener.at(), fastener.axis()).stream()
        .mapToDouble(c -> Math.max(0, Math.min(c.to(), length) - Math.max(c.from(), 0)))
        .sum();
  }

  /**
   * The wood that a shank needs round it in one of its panels: a cylinder as long as the stretch in
   * that panel, thicker than the fastener by {@code around} on all sides. Shorter where the shank
   * crosses a face aslant, so that it does not stand out there. Empty when it does not cross the
   * panel.
   */
  Optional<Body> sleeve(Body panel, double around) {
    double radius = fastener.diameter() / 2 + around;
    double square = squareness(panel);
    double slant = square > 1 - 1e-9 ? 0 : radius * Math.sqrt(1 - square * square) / square;
    double from = Double.POSITIVE_INFINITY;
    double to = Double.NEGATIVE_INFINITY;
    for (Chord chord : Chord.along(panel, fastener.at(), fastener.axis())) {
      double start = Math.max(0, chord.from());
      double end = Math.min(fastener.length(), chord.to());
      if (end > start) {
        from = Math.min(from, start);
        to = Math.max(to, end);
      }
    }
    from += slant;
    to -= slant;
    return to - from < TOUCH ? Optional.empty() : Optional.of(rod(from, to, 2 * radius));
  }

  /** The room that a shank needs with wood round it, from seat to tip, whatever it meets. */
  Body needed(double around) {
    return rod(0, fastener.length(), fastener.diameter() + 2 * around);
  }

  /**
   * True if the shank's line runs through a cut, and there only in parts that it joins: a dado or a
   * rabbet with the guest in it.
   */
  boolean isFilled(CutAir air) {
    double open = 0;
    boolean crosses = false;
    for (Chord gap : Chord.along(air.body(), fastener.at(), fastener.axis())) {
      double from = Math.max(0, gap.from());
      double to = Math.min(fastener.length(), gap.to());
      if (to > from) {
        crosses = true;
        open += to - from;
        for (Chord chord : material()) {
          open -= Math.max(0, Math.min(to, chord.to()) - Math.max(from, chord.from()));
        }
      }
    }
    return crosses && open < TOUCH;
  }

  /** The share of a sleeve's volume that is not wood of that panel, from 0 to 1. */
  static double airIn(Body sleeve, Body panel) {
    double wood = Overlap.between(sleeve, panel).map(Overlap::volume).orElse(0.0);
    return 1 - wood / sleeve.volume();
  }

  /** Cosine between its axis and the nearest of the panel's own axes: 1 when it goes in square. */
  private double squareness(Body panel) {
    Placement p = panel.placement();
    Vec axis = fastener.axis();
    return Math.max(
        Math.abs(axis.dot(p.w())), Math.max(Math.abs(axis.dot(p.u())), Math.abs(axis.dot(p.v()))));
  }

  private Body rod(double from, double to, double diameter) {
    Vec axis = fastener.axis();
    Vec aside = Math.abs(axis.x()) < 0.5 ? new Vec(1, 0, 0) : new Vec(0, 1, 0);
    Vec u = aside.minus(axis.scale(aside.dot(axis))).unit();
    Vec at = fastener.at().plus(axis.scale(from));
    return new Body(
        fastener.id(),
        Solids.cylinder(diameter, to - from),
        new Placement(u, axis.cross(u), axis, at));
  }
}
