package sawstead.assembly;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import sawstead.joinery.FastenerKind;

/**
 * The room that a tool takes up behind a fastener's head: barrels about the fastener's axis and at
 * most one grip that stands out to one side, which the person turns to where there is room.
 *
 * @param word how people call it
 * @param owned whether the user has it
 * @param drives what it drives
 * @param barrels from the head backwards
 * @param grip what stands out, hand included
 * @param tail the cord or hose that leaves the end of the grip
 */
public record Tool(
    String word,
    boolean owned,
    Set<FastenerKind> drives,
    List<Barrel> barrels,
    Optional<Grip> grip,
    Optional<Tail> tail) {

  /**
   * A cylinder about the axis; distances are from the head's seat backwards, mm.
   *
   * @param from where it begins
   * @param to where it ends
   * @param diameter mm
   */
  public record Barrel(double from, double to, double diameter) {
    public Barrel {
      if (!(to > from && from >= 0 && diameter > 0)) {
        throw new IllegalArgumentException(
            "a barrel has a length and a diameter: " + from + ".." + to);
      }
    }
  }

  /**
   * A bar square to the axis; distances are from the head's seat backwards, mm.
   *
   * @param from where it begins
   * @param to where it ends
   * @param out how far it reaches from the axis
   * @param width square to the axis and to its reach
   */
  public record Grip(double from, double to, double out, double width) {
    public Grip {
      if (!(to > from && from >= 0 && out > 0 && width > 0)) {
        throw new IllegalArgumentException("a grip has a length, a reach and a width");
      }
    }
  }

  /**
   * The first stretch of a cord or a hose, in line with the grip, up to where it can bend.
   *
   * @param length beyond the end of the grip, mm
   * @param width mm
   */
  public record Tail(double length, double width) {
    public Tail {
      if (!(length > 0 && width > 0)) {
        throw new IllegalArgumentException("a cord or a hose has a length and a width");
      }
    }
  }

  public Tool {
    drives = Set.copyOf(drives);
    barrels = List.copyOf(barrels);
    if (barrels.isEmpty()) {
      throw new IllegalArgumentException("a tool without a length: " + word);
    }
    if (tail.isPresent() && grip.isEmpty()) {
      throw new IllegalArgumentException("a cord leaves the end of a grip: " + word);
    }
  }

  /** How far from the head anything of it may be, mm. */
  double reach() {
    double back = barrels.stream().mapToDouble(Barrel::to).max().orElse(0);
    double wide = barrels.stream().mapToDouble(Barrel::diameter).max().orElse(0) / 2;
    double out =
        grip.map(g -> Math.max(g.out() + tail.map(Tail::length).orElse(0.0), g.width()))
            .orElse(0.0);
    return Math.hypot(Math.max(back, grip.map(Grip::to).orElse(0.0)), Math.max(wide, out));
  }
}
