package sawstead.assembly;

import java.util.List;
import sawstead.solid.Body;
import sawstead.solid.Box;
import sawstead.station.Part;
import sawstead.station.PartKind;

/**
 * What is never taken apart: a panel, the saw with all that is on it, a hinge, a caster, the vac.
 *
 * @param name id of its only part, or the first words that the ids of its parts share
 * @param parts at least one, by id
 */
record Thing(String name, List<Part> parts) {
  static final String SAW = "saw";
  static final String VAC = "vac/body";
  static final String HOSE = "vac/hose";

  Thing {
    parts = List.copyOf(parts);
  }

  /** Name of the thing that a part of that id belongs to. */
  static String nameOf(String id) {
    if (id.startsWith("saw/")) {
      return SAW;
    }
    if (id.startsWith("casters/plate-") || id.startsWith("casters/swivel-")) {
      return "casters/" + id.substring(id.lastIndexOf('-') + 1);
    }
    if (id.startsWith("casters/")) {
      return "casters/frame";
    }
    int hinge = id.indexOf("-hinge/");
    return hinge < 0 ? id : id.substring(0, hinge + "-hinge".length());
  }

  List<Body> bodies() {
    return parts.stream().map(Part::body).toList();
  }

  double mass() {
    return parts.stream().mapToDouble(Part::mass).sum();
  }

  /** A hose bends: no rigid motion is asked of it. */
  boolean isFlexible() {
    return name.equals(HOSE);
  }

  boolean isEnvelope() {
    return parts.stream().allMatch(p -> p.kind() == PartKind.ENVELOPE);
  }

  Box box() {
    return parts.stream().map(p -> p.body().box()).reduce(Box::union).orElseThrow();
  }
}
