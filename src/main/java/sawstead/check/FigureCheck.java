package sawstead.check;

import java.util.List;
import java.util.Optional;
import sawstead.brief.Vac;
import sawstead.station.Figure;

/**
 * The figures of a station keep their distance, as measured and at the worst ends of their bands.
 *
 * <ul>
 *   <li>{@code relief-shallow} (stop as measured, mind in the band): a bar or washer would scrape
 *       in its relief groove;
 *   <li>{@code groove-floor-in-band} (mind): less than {@link FloorCheck#LEAST} may remain under
 *       it;
 *   <li>{@code vac-doorway} (mind in the band): the vac may not pass under the upper stretcher of
 *       its side; as measured, {@link ExitCheck} looks for its way;
 *   <li>{@code vac-lid-room} (mind): its lid cannot be taken off in place;
 *   <li>{@code vac-air} (mind): it has less air round it than it needs.
 * </ul>
 *
 * Worst case over the bands, not likely case.
 */
final class FigureCheck implements Check {
  @Override
  public Outcome judge(Scene scene) {
    Outcome.Notes notes = new Outcome.Notes();
    for (Figure figure : scene.station().figures().values()) {
      if (figure.name().startsWith("reliefFloor-")) {
        judgeRelief(scene, figure, notes);
      } else if (figure.name().startsWith("reliefLeft-")) {
        judgeLeft(scene, figure, notes);
      }
    }
    scene.brief().vac().ifPresent(vac -> judgeVac(scene, vac, notes));
    return notes.outcome();
  }

  private static void judgeRelief(Scene scene, Figure figure, Outcome.Notes notes) {
    notes.add(
        Margin.length(
            figure.name(),
            "relief groove below bar or washer, at the worst",
            List.of("outfeed"),
            figure.low(),
            0));
    judgeBelow(
        scene,
        figure,
        0,
        "relief-shallow",
        "outfeed",
        "the relief groove lies above the floor of its miter slot by ",
        "write a larger grooves.floor, or a smaller drop",
        notes);
  }

  private static void judgeLeft(Scene scene, Figure figure, Outcome.Notes notes) {
    if (figure.nominal() >= FloorCheck.LEAST && figure.low() < FloorCheck.LEAST) {
      notes.add(
          Finding.general(
              Severity.MIND,
              "groove-floor-in-band",
              List.of("outfeed"),
              "as little as "
                  + scene.words().length(figure.low())
                  + " of wood may remain under a relief groove, less than "
                  + scene.words().length(FloorCheck.LEAST),
              "measure "
                  + first(figure)
                  + " on the sheet at hand before you rout, or glue a rib below"));
    }
  }

  private static void judgeVac(Scene scene, Vac vac, Outcome.Notes notes) {
    figure(scene, "vacDoorway")
        .ifPresent(
            f -> {
              notes.add(
                  Margin.length(
                      f.name(), "doorway over the vac", List.of("vac/body"), f.nominal(), 0));
              if (f.nominal() >= 0) {
                judgeBelow(
                    scene,
                    f,
                    0,
                    "vac-doorway",
                    "vac/body",
                    "the vac is too high to pass under the upper stretcher, by ",
                    "make the legs longer, the stretcher less high, or leave that stretcher off when"
                        + " the vac must come out",
                    notes);
              }
            });
    figure(scene, "vacHeadroom")
        .ifPresent(
            f ->
                judgeRoom(
                    scene,
                    f,
                    vac.lidRoom().nominal(),
                    "vac-lid-room",
                    "free above the vac",
                    "its lid does not come off in place: roll it out, or make the legs longer",
                    notes));
    for (String name : List.of("vacSideRoom", "vacDepthRoom")) {
      figure(scene, name)
          .ifPresent(
              f ->
                  judgeRoom(
                      scene,
                      f,
                      2 * vac.around().nominal(),
                      "vac-air",
                      name.equals("vacSideRoom")
                          ? "free beside the vac, both sides together"
                          : "free before and behind the vac together",
                      "intake and exhaust need air: make the stand larger there",
                      notes));
    }
  }

  private static void judgeRoom(
      Scene scene,
      Figure figure,
      double needs,
      String rule,
      String what,
      String remedy,
      Outcome.Notes notes) {
    notes.add(Margin.length(figure.name(), what, List.of("vac/body"), figure.nominal(), needs));
    if (figure.nominal() >= 0 && figure.nominal() < needs) {
      notes.add(
          Finding.general(
              Severity.MIND,
              rule,
              List.of("vac/body"),
              what
                  + ": "
                  + scene.words().length(figure.nominal())
                  + ", needed "
                  + scene.words().length(needs),
              remedy));
    }
  }

  /** A stop when the figure itself is below the least, a mind when only its band is. */
  private static void judgeBelow(
      Scene scene,
      Figure figure,
      double least,
      String rule,
      String about,
      String says,
      String remedy,
      Outcome.Notes notes) {
    if (figure.nominal() < least) {
      notes.add(
          Finding.general(
              Severity.STOP,
              rule,
              List.of(about),
              says + scene.words().length(least - figure.nominal()),
              remedy));
    } else if (figure.low() < least) {
      notes.add(
          Finding.general(
              Severity.MIND,
              rule,
              List.of(about),
              says
                  + scene.words().length(least - figure.low())
                  + " when every measurement is off the wrong way",
              "measure " + first(figure) + " better; or " + remedy));
    }
  }

  private static String first(Figure figure) {
    return figure.rests().isEmpty() ? "everything" : figure.rests().get(0);
  }

  private static Optional<Figure> figure(Scene scene, String name) {
    return Optional.ofNullable(scene.station().figures().get(name));
  }
}
