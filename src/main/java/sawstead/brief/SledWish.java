package sawstead.brief;

import static java.util.Objects.requireNonNull;

import java.util.Optional;
import sawstead.measure.Measured;

/**
 * A sled that is to be built. An empty wish is decided by the design, from the saw.
 *
 * @param id first word of its parts' ids
 * @param kind what it is for
 * @param sheet sheet of base, fence and guard
 * @param runnerSheet sheet or strip of its runners, lying flat in the slot
 * @param runners in which slots it runs
 * @param runnerWidth width of the runners, mm; from the slots where none is given
 * @param play of the guiding runner in its slot, both sides together, mm
 * @param proud how far the runners are shimmed above the table for the glue-up, mm
 * @param left base to the left of the blade, mm
 * @param right base to the right of the blade, mm
 * @param widest widest board, from the fence's face, mm
 * @param bridge whether the far side has a bridge
 * @param stopSide LEFT or RIGHT of the blade
 * @param extension of the stop's arm beyond the base, mm; 0 for a stop on the base only
 * @param guardLength of the exit guard, mm
 * @param hands how far the hand at a small-parts sled's clamp stays from the blade, mm
 * @param guardStays whether the saw's overhead guard cannot be put aside
 */
public record SledWish(
    String id,
    SledKind kind,
    String sheet,
    String runnerSheet,
    Optional<RunnerChoice> runners,
    Optional<Measured> runnerWidth,
    Measured play,
    Measured proud,
    Optional<Measured> left,
    Optional<Measured> right,
    Optional<Measured> widest,
    boolean bridge,
    Side stopSide,
    Measured extension,
    Optional<Measured> guardLength,
    Measured hands,
    boolean guardStays) {
  public SledWish {
    requireNonNull(id, "id");
    requireNonNull(kind, "kind");
    requireNonNull(sheet, "sheet");
    requireNonNull(runnerSheet, "runnerSheet");
    requireNonNull(runners, "runners");
    requireNonNull(runnerWidth, "runnerWidth");
    requireNonNull(play, "play");
    requireNonNull(proud, "proud");
    requireNonNull(left, "left");
    requireNonNull(right, "right");
    requireNonNull(widest, "widest");
    requireNonNull(stopSide, "stopSide");
    requireNonNull(extension, "extension");
    requireNonNull(guardLength, "guardLength");
    requireNonNull(hands, "hands");
  }
}
