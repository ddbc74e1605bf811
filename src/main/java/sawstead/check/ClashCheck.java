package sawstead.check;

import java.util.List;
import sawstead.station.Part;
import sawstead.station.PartKind;

/**
 * Two bodies never want the same room.
 *
 * <ul>
 *   <li>{@code clash} (stop): a pair overlaps by more than the contact tolerance;
 *   <li>{@code saw-overlap} (mind): the same for two parts of the saw, which then was not measured
 *       as it is.
 * </ul>
 *
 * Certified: misses no pair and accuses none, round things taken as polygons on the side that adds
 * material, by at most 0.02 mm.
 */
final class ClashCheck implements Check {
  @Override
  public Outcome judge(Scene scene) {
    return Outcome.of(scene.clashes().stream().map(c -> finding(scene, c)).toList());
  }

  private static Finding finding(Scene scene, Clash clash) {
    Part a = scene.station().part(clash.a()).orElseThrow();
    Part b = scene.station().part(clash.b()).orElseThrow();
    List<String> about = List.of(clash.a(), clash.b());
    String says =
        clash.a() + " and " + clash.b() + " overlap by " + scene.words().length(clash.depth());
    if (a.unit().equals("saw") && b.unit().equals("saw")) {
      return Finding.mind(
          "saw-overlap",
          about,
          clash.at(),
          says + ": the saw's measurements contradict each other there",
          "measure both again; until then every clearance near them is a guess");
    }
    return Finding.stop("clash", about, clash.at(), says, remedy(scene, a, b, clash));
  }

  private static String remedy(Scene scene, Part a, Part b, Clash clash) {
    String by = scene.words().length(clash.depth());
    if (a.kind() == PartKind.ENVELOPE && b.kind() == PartKind.ENVELOPE) {
      return "measure both again, or give them more room: " + by + " is missing";
    }
    if (a.kind() == PartKind.ENVELOPE || b.kind() == PartKind.ENVELOPE) {
      Part envelope = a.kind() == PartKind.ENVELOPE ? a : b;
      Part other = envelope == a ? b : a;
      return "give "
          + envelope.id()
          + " "
          + by
          + " more room in the brief, or change what places "
          + other.id();
    }
    return "move or shorten one of the two by " + by;
  }
}
