package sawstead.check;

import java.util.Optional;
import sawstead.solid.Slide;

/** What to do about a motion that is blocked, in numbers. */
final class MotionRemedy {
  private MotionRemedy() {}

  static String of(Scene scene, Passage passage, Passage.Contact contact) {
    String id = passage.mover().id();
    double missing = Math.abs(passage.mover().motion().to() - contact.at());
    if (id.startsWith("ports/")) {
      return port(scene, id);
    }
    if (id.startsWith("gauge/") && contact.with().startsWith("outfeed/")) {
      return "make the relief groove "
          + scene.words().atLeast(missing)
          + " longer, open it to the rear, or use a bar that reaches that much less";
    }
    Optional<String> ownWord = ofSledOrInsert(id, contact);
    if (ownWord.isPresent()) {
      return ownWord.get();
    }
    Optional<Clearing.Shift> shift = Clearing.of(scene.station(), passage, scene.contact());
    if (shift.isPresent()) {
      return words(scene, shift.get());
    }
    return passage.mover().motion() instanceof Slide
        ? "move "
            + contact.with()
            + " out of the way, or stop the motion "
            + scene.words().atLeast(missing)
            + " earlier"
        : "move " + contact.with() + " out of the way, or stop the motion earlier";
  }

  /** The saw stays as it is: what meets it in use must be made otherwise. */
  private static Optional<String> ofSledOrInsert(String id, Passage.Contact contact) {
    boolean stroke = id.endsWith("/stroke");
    return switch (contact.with()) {
      case "saw/guard" ->
          stroke
              ? Optional.of(
                  "leave `guardStays` out: this sled only passes where the guard is lifted or off,"
                      + " as the saw's manual allows it")
              : Optional.empty();
      case "saw/table" ->
          stroke
              ? Optional.of(
                  "make "
                      + contact.mover()
                      + " narrower than the slot that it runs in, or leave `runnerWidth` out")
              : Optional.empty();
      case "saw/knife" ->
          id.endsWith("/lifts-out")
              ? Optional.of("slot it for the knife (`knifeSlot: true`)")
              : Optional.empty();
      default -> Optional.empty();
    };
  }

  private static String port(Scene scene, String id) {
    boolean plug = id.endsWith("-plug-passes");
    double across =
        plug
            ? scene.brief().saw().orElseThrow().cord().plug().high()
            : scene.brief().vac().orElseThrow().hose().cuff().high();
    return "bore it at least "
        + scene.words().atLeast(across)
        + " wide, as the "
        + (plug ? "plug's diagonal" : "cuff")
        + " may be, or notch an edge for it";
  }

  private static String words(Scene scene, Clearing.Shift shift) {
    String by = scene.words().atLeast(shift.by());
    String way =
        switch (shift.way()) {
          case DOWN -> "lower";
          case UP -> "higher";
          case LEFT -> "further left";
          case RIGHT -> "further right";
          case FRONT -> "further forward";
          case REAR -> "further back";
        };
    if (shift.hinge()) {
      return "set the hinge's axis " + by + " " + way;
    }
    if (shift.unit().startsWith("room/")) {
      return "stand the station " + by + " further away from " + shift.unit();
    }
    return switch (shift.way()) {
      case DOWN -> "lower " + shift.unit() + " by " + by;
      case UP -> "raise " + shift.unit() + " by " + by;
      default -> "set " + shift.unit() + " " + by + " " + way;
    };
  }
}
