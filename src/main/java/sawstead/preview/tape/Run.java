package sawstead.preview.tape;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import sawstead.check.Passage;
import sawstead.check.Report;
import sawstead.check.Words;
import sawstead.preview.scene.BuildOrder;
import sawstead.solid.Turn;
import sawstead.station.Mover;
import sawstead.station.Station;

/**
 * What the tape measures: one motion, or the steps of the build.
 *
 * @param name shown in the chooser
 * @param mover the motion; empty for the build
 * @param scale of the marks
 * @param from first parameter
 * @param to last parameter
 * @param start where the thumb is at first
 * @param contact where the motion is stopped, if it is
 * @param says what is printed on the tape
 */
public record Run(
    String name,
    Optional<Mover> mover,
    Scale scale,
    double from,
    double to,
    double start,
    Optional<Passage.Contact> contact,
    String says) {
  /** What is counted. */
  public enum Scale {
    /** mm, shown in the unit of the brief */
    LENGTH,
    /** degrees */
    ANGLE,
    /** steps of the build */
    STEPS
  }

  /** Refuses what has no name. */
  public Run {
    Objects.requireNonNull(name, "name");
    Objects.requireNonNull(mover, "mover");
    Objects.requireNonNull(contact, "contact");
  }

  /** The build of a station, step by step. */
  public static Run build(BuildOrder order) {
    int steps = order.comings().size();
    return new Run(
        "the build, step by step",
        Optional.empty(),
        Scale.STEPS,
        0,
        steps,
        steps,
        Optional.empty(),
        steps == 1 ? "one step" : steps + " steps");
  }

  /** A motion; what a report found about it is printed on the tape. */
  public static Run of(Mover mover, Optional<Report> report, Words words) {
    boolean turn = mover.motion() instanceof Turn;
    Optional<Passage> passage =
        report.stream()
            .flatMap(r -> r.passages().stream())
            .filter(p -> p.mover().id().equals(mover.id()))
            .findFirst();
    Optional<Passage.Contact> contact = passage.flatMap(Passage::firstContact);
    double from = mover.motion().from();
    double to = mover.motion().to();
    String way = amount(turn, Math.abs(to - from), words);
    String says =
        passage.isEmpty()
            ? way + ", not checked yet"
            : contact
                .map(
                    c ->
                        "first contact with "
                            + c.with()
                            + " after "
                            + amount(turn, Math.abs(c.at() - from), words))
                .orElse("clear all the way, " + way + clearBy(passage.get(), words));
    return new Run(
        mover.id().replace('-', ' ').replace("/", ": "),
        Optional.of(mover),
        turn ? Scale.ANGLE : Scale.LENGTH,
        from,
        to,
        mover.motion().rest(),
        contact,
        says);
  }

  /** All that a station can do: its motions, then its build. */
  public static List<Run> all(Station station, BuildOrder order, Optional<Report> report) {
    Words words = new Words(station.brief().units());
    List<Run> runs = new java.util.ArrayList<>();
    station.movers().forEach(m -> runs.add(of(m, report, words)));
    if (!order.comings().isEmpty()) {
      runs.add(build(order));
    }
    return runs;
  }

  private static String clearBy(Passage passage, Words words) {
    return passage
        .leastClearance()
        .filter(c -> c > 0)
        .map(c -> ", clear by " + words.length(c))
        .orElse("");
  }

  private static String amount(boolean turn, double value, Words words) {
    return turn
        ? String.format(java.util.Locale.ROOT, value < 10 ? "%.2f\u00b0" : "%.1f\u00b0", value)
        : words.length(value);
  }

  /** What a value of this run reads like. */
  String reads(double value, Words words, BuildOrder order) {
    return switch (scale) {
      case LENGTH -> words.length(value);
      case ANGLE -> String.format(java.util.Locale.ROOT, "%.1f\u00b0", value);
      case STEPS ->
          order
              .at(step(value))
              .map(c -> "step " + c.number() + ": " + c.fixing())
              .orElse("nothing yet");
    };
  }

  /** The number of the step that a place on the tape of the build belongs to. */
  public static int step(double value) {
    return (int) Math.ceil(value - 1e-9);
  }
}
