package sawstead.station.unit;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import sawstead.brief.Fence;
import sawstead.brief.FenceKind;
import sawstead.solid.Slide;
import sawstead.solid.Vec;
import sawstead.station.Contact;
import sawstead.station.Draft;
import sawstead.station.Mover;

/**
 * How the fence travels: with its clamp along the rails, on the right of the blade and, lifted over
 * it, on the left; and on an extending fence with both rails, as far as they run out. The parameter
 * is the place of the face that looks to the blade, or the way that the rails have run out, mm.
 *
 * @param fence as measured
 * @param parked where its face is drawn
 */
record FenceTravel(Fence fence, double parked) {
  /**
   * Nearest that a fence is set to the blade, mm: the guard is in the way before (common practice,
   * no source).
   */
  private static final double NEAREST = 19;

  private static final Vec RIGHT = new Vec(1, 0, 0);

  void tell(Draft draft) {
    List<String> slider = present(draft, "saw/fence", "saw/fence-clamp");
    List<String> rails = present(draft, "saw/rail-front", "saw/rail-rear");
    List<Contact> rests = new ArrayList<>();
    for (String one : slider) {
      Stream.concat(rails.stream(), Stream.of("saw/table"))
          .forEach(r -> rests.add(new Contact(one, r)));
    }
    double right = fence.right().nominal();
    if (right > NEAREST) {
      draft.mover(
          new Mover("saw/fence-travels", slider, new Slide(RIGHT, NEAREST, right, parked), rests));
    }
    double left = fence.left().nominal();
    double width = fence.width().nominal();
    if (left > NEAREST) {
      draft.mover(
          new Mover(
              "saw/fence-travels-left",
              slider,
              new Slide(RIGHT, -left - width, -NEAREST - width, parked),
              rests));
    }
    double out = fence.runOut().nominal();
    if (fence.kind() == FenceKind.EXTENDING && out > 0 && !rails.isEmpty()) {
      List<String> all = new ArrayList<>(slider);
      all.addAll(rails);
      List<Contact> contacts = all.stream().map(id -> new Contact(id, "saw/table")).toList();
      draft.mover(new Mover("saw/rails-run-out", all, new Slide(RIGHT, 0, out, 0), contacts));
    }
  }

  private static List<String> present(Draft draft, String... ids) {
    List<String> all = draft.bodies().stream().map(p -> p.id()).toList();
    return Stream.of(ids).filter(all::contains).toList();
  }
}
