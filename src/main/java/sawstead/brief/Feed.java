package sawstead.brief;

import static java.util.Objects.requireNonNull;

import java.util.Optional;
import sawstead.measure.Measured;

/**
 * A board that is fed.
 *
 * @param id short name
 * @param cut along or across it
 * @param length along its grain, mm
 * @param width across its grain, mm
 * @param thickness mm
 * @param keep between fence and blade, or between its right end and the blade, mm
 */
public record Feed(
    String id,
    Cut cut,
    Measured length,
    Measured width,
    Measured thickness,
    Optional<Measured> keep) {

  /** Which way it is cut. */
  public enum Cut {
    /** Along the grain, against the fence. */
    RIP,
    /** Across the grain, against the miter gauge. */
    CROSSCUT
  }

  public Feed {
    requireNonNull(id, "id");
    requireNonNull(cut, "cut");
    requireNonNull(length, "length");
    requireNonNull(width, "width");
    requireNonNull(thickness, "thickness");
    requireNonNull(keep, "keep");
  }
}
