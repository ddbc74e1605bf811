package sawstead.check;

import java.util.List;
import java.util.Optional;
import sawstead.brief.DrawerWish;
import sawstead.solid.Axis;
import sawstead.solid.Box;
import sawstead.solid.Slide;
import sawstead.station.Mover;

/**
 * A drawer in its bay.
 *
 * <ul>
 *   <li>{@code drawer-tight} (stop): its slides do not go in between box and bay;
 *   <li>{@code drawer-loose} (mind): more room than slides forgive, by {@link #FORGIVES};
 *   <li>{@code drawer-high} (stop): the box does not pass under what is above it;
 *   <li>{@code drawer-short} (mind): open, more than {@link #HIDDEN} of its box stays inside.
 * </ul>
 *
 * Exact on the solids; the limits are common practice, no source. That it runs out clear of all
 * else is a motion, that its contents come out an exit.
 */
final class DrawerCheck implements Check {
  /** Room beside a slide that it takes up, mm on one side. */
  static final double FORGIVES = 0.8;

  /** Share of the box that may stay inside. */
  static final double HIDDEN = 0.25;

  /** What doubles and grids may be off by, mm. */
  private static final double ROUNDING = 1e-4;

  @Override
  public Outcome judge(Scene scene) {
    Outcome.Notes notes = new Outcome.Notes();
    for (DrawerWish drawer : scene.brief().drawers()) {
      Optional<Mover> opens = scene.station().mover(drawer.id() + "/opens");
      if (opens.isPresent()) {
        Slide slide = (Slide) opens.get().motion();
        Axis along = Math.abs(slide.direction().x()) > 0.5 ? Axis.X : Axis.Y;
        beside(scene, drawer, along == Axis.X ? Axis.Y : Axis.X, notes);
        high(scene, drawer, notes);
        out(scene, drawer, slide, along, notes);
      }
    }
    return notes.outcome();
  }

  private static Box box(Scene scene, DrawerWish drawer, String part) {
    return scene.body(drawer.id() + "/" + part).orElseThrow().box();
  }

  private static void beside(Scene scene, DrawerWish drawer, Axis across, Outcome.Notes notes) {
    double slide = drawer.slide().nominal();
    double wall = box(scene, drawer, "slide-1-stays").low().along(across);
    double has = box(scene, drawer, "side-1").low().along(across) - wall;
    List<String> about = List.of(drawer.id() + "/side-1", drawer.id() + "/slide-1-stays");
    Words words = scene.words();
    if (has < slide - ROUNDING) {
      notes.add(
          Finding.general(
              Severity.STOP,
              "drawer-tight",
              about,
              "beside the box of %s there is %s, and a slide takes %s"
                  .formatted(drawer.id(), words.length(has), words.length(slide)),
              "make the box %s narrower, or leave `width` out"
                  .formatted(words.atLeast(2 * (slide - has)))));
    } else {
      notes.add(
          Margin.length(
              "drawer-" + drawer.id(), "room for a slide of " + drawer.id(), about, has, slide));
    }
    if (has > slide + FORGIVES + ROUNDING) {
      notes.add(
          Finding.general(
              Severity.MIND,
              "drawer-loose",
              about,
              "beside the box of %s there is %s, and a slide of %s forgives %s more"
                  .formatted(
                      drawer.id(), words.length(has), words.length(slide), words.length(FORGIVES)),
              "pack both slides out by %s, or make the box wider"
                  .formatted(words.length(has - slide))));
    }
  }

  private static void high(Scene scene, DrawerWish drawer, Outcome.Notes notes) {
    double top = box(scene, drawer, "side-1").high().z();
    double front = box(scene, drawer, "front").high().z();
    if (top > front + ROUNDING) {
      notes.add(
          Finding.general(
              Severity.STOP,
              "drawer-high",
              List.of(drawer.id() + "/side-1", drawer.id() + "/front"),
              "the box of %s is %s higher than its front, which fills the bay"
                  .formatted(drawer.id(), scene.words().length(top - front)),
              "make the box that much lower (drawers.height), or the bay higher"));
    }
  }

  private static void out(
      Scene scene, DrawerWish drawer, Slide slide, Axis along, Outcome.Notes notes) {
    double deep = box(scene, drawer, "side-1").size().along(along);
    double hidden = deep - slide.to();
    List<String> about = List.of(drawer.id() + "/opens");
    if (hidden > HIDDEN * deep + ROUNDING) {
      notes.add(
          Finding.general(
              Severity.MIND,
              "drawer-short",
              about,
              "open, %s of the box of %s stay inside, of %s"
                  .formatted(scene.words().length(hidden), drawer.id(), scene.words().length(deep)),
              "take slides that come out farther (drawers.travel)"));
    }
  }
}
