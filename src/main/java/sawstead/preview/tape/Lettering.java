package sawstead.preview.tape;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import sawstead.measure.Unit;

/**
 * All that is written on a tape and above it, and where.
 *
 * @param marks all of them, with a number or without
 * @param above the words above the tape, left to right
 * @param numbers at the marks, left to right
 */
record Lettering(List<Marks.Mark> marks, List<Word> above, List<Word> numbers) {
  /** Bare tape at either end, pixels. */
  static final double SIDE = 18;

  private static final double EDGE = 4;

  /** Numbers are no nearer to each other, from middle to middle, than this. */
  private static final double APART = 44;

  /** A sentence that is cut to less says nothing any more. */
  private static final double LEAST = 60;

  private static final double CLEAR = 3;

  Lettering {
    marks = List.copyOf(marks);
    above = List.copyOf(above);
    numbers = List.copyOf(numbers);
  }

  /**
   * A word in its place, pixels.
   *
   * @param text cut short where there is no room for all of it
   */
  record Word(String text, double from, double to) {}

  /**
   * Letters a tape.
   *
   * @param width of the tape, pixels
   * @param thumb parameter under the thumb
   * @param reads what the thumb reads
   * @param wide how wide words are, pixels
   */
  static Lettering of(
      Run run, Unit unit, double width, double thumb, String reads, ToDoubleFunction<String> wide) {
    List<Marks.Mark> marks = marks(run, unit, width - 2 * SIDE, wide);
    return new Lettering(
        marks, above(run, width, reads, wide), numbers(run, marks, width, thumb, wide));
  }

  /** Numbered so that the widest number has room. */
  private static List<Marks.Mark> marks(
      Run run, Unit unit, double pixels, ToDoubleFunction<String> wide) {
    double apart = APART;
    List<Marks.Mark> marks = Marks.of(run, unit, pixels, apart);
    double widest = widest(marks, wide) + 2 * CLEAR;
    if (widest > apart) {
      marks = Marks.of(run, unit, pixels, widest);
    }
    return marks;
  }

  private static double widest(List<Marks.Mark> marks, ToDoubleFunction<String> wide) {
    return marks.stream().map(Marks.Mark::number).distinct().mapToDouble(wide).max().orElse(0);
  }

  /** Pixels from the left of a parameter. */
  static double pixel(Run run, double width, double at) {
    double low = Math.min(run.from(), run.to());
    double high = Math.max(run.from(), run.to());
    return SIDE + (at - low) / Math.max(1e-9, high - low) * (width - 2 * SIDE);
  }

  private static OptionalDouble sign(Run run, double width) {
    return run.contact().stream().mapToDouble(c -> pixel(run, width, c.at())).findFirst();
  }

  private static List<Word> above(
      Run run, double width, String reads, ToDoubleFunction<String> wide) {
    double all = wide.applyAsDouble(reads);
    // A number that is cut short would be another number.
    double least = run.scale() == Run.Scale.STEPS ? LEAST : all;
    Captions captions =
        Captions.of(width, sign(run, width), all, least, wide.applyAsDouble(run.says()));
    List<Word> words = new ArrayList<>();
    captions.reads().ifPresent(room -> words.add(within(reads, room, wide)));
    captions.says().ifPresent(room -> words.add(within(run.says(), room, wide)));
    return words;
  }

  private static Word within(String words, Captions.Room room, ToDoubleFunction<String> wide) {
    String cut = words;
    String text = words;
    while (!cut.isEmpty() && wide.applyAsDouble(text) > room.width() + 0.5) {
      cut = cut.substring(0, cut.offsetByCodePoints(cut.length(), -1));
      text = cut + "...";
    }
    return new Word(text, room.from(), room.from() + wide.applyAsDouble(text));
  }

  /** Within the tape; none that would stand half under a line. */
  private static List<Word> numbers(
      Run run, List<Marks.Mark> marks, double width, double thumb, ToDoubleFunction<String> wide) {
    List<Word> numbers = new ArrayList<>();
    OptionalDouble sign = sign(run, width);
    double end = 0;
    for (Marks.Mark mark : marks) {
      if (mark.number().isEmpty()) {
        continue;
      }
      double half = wide.applyAsDouble(mark.number()) / 2;
      double x = Math.max(EDGE + half, Math.min(width - EDGE - half, pixel(run, width, mark.at())));
      boolean hidden =
          Math.abs(pixel(run, width, thumb) - x) < half + CLEAR
              || sign.isPresent() && Math.abs(sign.getAsDouble() - x) < half + CLEAR
              || x - half < end;
      if (!hidden) {
        numbers.add(new Word(mark.number(), x - half, x + half));
        end = x + half + CLEAR;
      }
    }
    return numbers;
  }
}
