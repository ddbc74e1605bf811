package sawstead.assembly;

import java.util.List;

/** What people call the parts that are never taken apart. */
public final class ThingNames {
  private ThingNames() {}

  /** The things that parts belong to, each once, in the order of the parts: one hinge, one saw. */
  public static List<String> of(List<String> parts) {
    return parts.stream().map(Thing::nameOf).distinct().toList();
  }
}
