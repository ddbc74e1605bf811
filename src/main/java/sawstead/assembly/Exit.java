package sawstead.assembly;

import java.util.List;
import java.util.Optional;
import sawstead.solid.Turn;
import sawstead.solid.Vec;

/**
 * How something that is kept in the finished station comes out of it.
 *
 * @param id of the thing
 * @param verdict what was found
 * @param path translations one after the other, mm, after what {@code first} names is off and the
 *     turn is made
 * @param first ids of removable parts to take off first
 * @param least clearance on the way to what it does not touch at rest, mm; infinite where there is
 *     nothing, 0 without a way
 * @param turn by which it is tilted where it stands before it goes; empty when it comes out upright
 * @param obstacles what is in the way along the direction that lacks least; empty with a way
 * @param lacks how much room is missing along the direction that lacks least, mm; also told of what
 *     comes out after something is off
 * @param opening which way the room is missing, in words: {@code higher}, {@code wider}
 */
public record Exit(
    String id,
    Verdict verdict,
    List<Vec> path,
    List<String> first,
    double least,
    Optional<Turn> turn,
    List<String> obstacles,
    double lacks,
    String opening) {

  /** What is known about a way out. */
  public enum Verdict {
    /** It comes out. */
    FREE,
    /** It comes out once something is taken off. */
    AFTER,
    /** It comes out tilted. */
    TILTED,
    /** There is no way without tilting, and none was found with it. */
    NONE,
    /** Neither a way nor its absence was proven. */
    UNDECIDED;

    /** The word of the report. */
    public String word() {
      return name().toLowerCase(java.util.Locale.ROOT);
    }
  }

  public Exit {
    path = List.copyOf(path);
    first = List.copyOf(first);
    obstacles = List.copyOf(obstacles);
  }

  /** Degrees that it must be tilted by; 0 when it comes out upright. */
  public double tilt() {
    return turn.map(Turn::to).orElse(0.0);
  }

  /** The same with the room that is missing before what comes first is off. */
  Exit lacking(Lack lack) {
    return new Exit(id, verdict, path, first, least, turn, obstacles, lack.missing(), lack.words());
  }
}
