package sawstead.check;

import java.util.List;
import java.util.Locale;
import sawstead.assembly.Exit;
import sawstead.solid.Turn;
import sawstead.solid.Vec;
import sawstead.station.Part;

/**
 * What is kept in the finished station comes out of it:
 *
 * <ul>
 *   <li>{@code vac-locked}, {@code contents-locked} (stop): proven to have no way without tilting,
 *       and none was found with it; says the smallest change that frees one;
 *   <li>{@code vac-undecided}, {@code contents-undecided} (mind): neither a way nor its absence was
 *       proven;
 *   <li>{@code vac-after}, {@code contents-after} (note): something must be opened or taken off;
 *   <li>{@code vac-tilted}, {@code contents-tilted} (mind): only when tipped.
 * </ul>
 *
 * The way is certified in the sense of the kernel's sweep; its absence by boxes inside the bodies.
 */
final class ExitCheck implements Check {
  @Override
  public Outcome judge(Scene scene) {
    Outcome.Notes notes = new Outcome.Notes();
    for (Exit exit : scene.plan().exits()) {
      Vec at = scene.station().part(exit.id()).map(Part::body).orElseThrow().centroid();
      String name = exit.id().startsWith("vac/") ? "vac" : "contents";
      String what = name.equals("vac") ? "the vac" : exit.id();
      switch (exit.verdict()) {
        case NONE ->
            notes.add(
                Finding.stop(
                    name + "-locked",
                    about(exit),
                    at,
                    what
                        + " cannot come out: there is no way without tilting, and none was found with it",
                    remedy(scene, exit)));
        case UNDECIDED ->
            notes.add(
                Finding.mind(
                    name + "-undecided",
                    about(exit),
                    at,
                    "no way out was found for " + what + ", nor proven that there is none",
                    remedy(scene, exit)));
        case AFTER ->
            notes.add(
                Finding.general(
                    Severity.NOTE,
                    name + "-after",
                    about(exit),
                    what
                        + " comes out after "
                        + Words.some(exit.first())
                        + " is open or off"
                        + (Double.isFinite(exit.lacks()) && exit.lacks() > 0
                            ? "; without that the way is "
                                + scene.words().length(exit.lacks())
                                + " short"
                            : ""),
                    "plan for it when you fill the place: " + Words.some(exit.first())));
        case TILTED ->
            notes.add(
                Finding.mind(
                    name + "-tilted",
                    about(exit),
                    at,
                    String.format(
                        Locale.ROOT,
                        "%s only comes out tipped by %.0f degrees%s",
                        what,
                        exit.tilt(),
                        exit.turn().map(ExitCheck::tipped).orElse("")),
                    "empty it often, or " + remedy(scene, exit)));
        case FREE -> {
          if (Double.isFinite(exit.least())) {
            notes.add(
                Margin.length(
                    name + "-way-out",
                    "free beside " + what + " on its way out",
                    about(exit),
                    exit.least(),
                    0));
          }
        }
      }
    }
    return notes.outcome();
  }

  /** Which way the top goes in a turn about an edge. */
  private static String tipped(Turn turn) {
    Vec top = turn.direction().cross(new Vec(0, 0, 1));
    if (Math.abs(top.x()) > Math.abs(top.y())) {
      return top.x() < 0 ? " to the left" : " to the right";
    }
    return top.y() < 0 ? " towards you" : " to the rear";
  }

  private static List<String> about(Exit exit) {
    return java.util.stream.Stream.concat(
            java.util.stream.Stream.of(exit.id()),
            java.util.stream.Stream.concat(exit.first().stream(), exit.obstacles().stream()))
        .distinct()
        .toList();
  }

  private static String remedy(Scene scene, Exit exit) {
    String parts = Words.some(exit.obstacles());
    if (exit.obstacles().isEmpty() || !Double.isFinite(exit.lacks())) {
      return "leave one side open (station.stand.sides), or make what closes it removable";
    }
    return "make the opening "
        + scene.words().length(exit.lacks())
        + " "
        + exit.opening()
        + " past "
        + parts
        + ", or screw that on without glue where a driver reaches it";
  }
}
