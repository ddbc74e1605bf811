package sawstead.joinery;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import sawstead.measure.LengthFormat;
import sawstead.solid.Box;

/**
 * What is at hand to fix a joint with, and what new fasteners have to keep clear of besides the
 * features of the boards.
 *
 * @param shelf screws at hand
 * @param brad brads at hand
 * @param glue whether there is glue
 * @param present fasteners that are already there, of the whole station
 * @param keepClear station boxes that no fastener's body may enter, mm
 * @param lengths how lengths are written in words
 */
public record Fixings(
    ScrewShelf shelf,
    Brad brad,
    boolean glue,
    List<Fastener> present,
    List<Box> keepClear,
    LengthFormat lengths) {
  /** Copies its lists. */
  public Fixings {
    Objects.requireNonNull(shelf, "shelf");
    Objects.requireNonNull(brad, "brad");
    Objects.requireNonNull(lengths, "lengths");
    present = List.copyOf(present);
    keepClear = List.copyOf(keepClear);
  }

  /** Screws from a shelf, the usual brads, glue, and nothing there yet. */
  public static Fixings of(ScrewShelf shelf) {
    return new Fixings(shelf, Brad.USUAL, true, List.of(), List.of(), LengthFormat.millimetres());
  }

  /** The same with other brads. */
  public Fixings withBrads(Brad other) {
    return new Fixings(shelf, other, glue, present, keepClear, lengths);
  }

  /** The same without glue. */
  public Fixings withoutGlue() {
    return new Fixings(shelf, brad, false, present, keepClear, lengths);
  }

  /** The same with lengths written otherwise. */
  public Fixings writing(LengthFormat format) {
    return new Fixings(shelf, brad, glue, present, keepClear, format);
  }

  /** The same after more fasteners were driven. */
  public Fixings and(List<Fastener> more) {
    List<Fastener> all = new ArrayList<>(present);
    all.addAll(more);
    return new Fixings(shelf, brad, glue, all, keepClear, lengths);
  }

  /** The same with more station boxes that no fastener may enter. */
  public Fixings keepingClear(List<Box> more) {
    List<Box> all = new ArrayList<>(keepClear);
    all.addAll(more);
    return new Fixings(shelf, brad, glue, present, all, lengths);
  }

  /** The first free number for ids {@code part/word-n}. */
  int nextNumber(String part, FastenerKind kind) {
    String start = part + "/" + kind.word() + "-";
    int next = 1;
    for (Fastener fastener : present) {
      if (fastener.id().startsWith(start)) {
        String rest = fastener.id().substring(start.length());
        if (rest.matches("[0-9]{1,9}")) {
          next = Math.max(next, Integer.parseInt(rest) + 1);
        }
      }
    }
    return next;
  }
}
