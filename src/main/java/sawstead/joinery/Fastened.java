package sawstead.joinery;

import java.util.ArrayList;
import java.util.List;

/**
 * Fasteners that found room, and in words those that did not.
 *
 * @param fasteners numbered, in row order
 * @param shortfalls one sentence each
 */
record Fastened(List<Fastener> fasteners, List<String> shortfalls) {
  static final Fastened NONE = new Fastened(List.of(), List.of());

  Fastened {
    fasteners = List.copyOf(fasteners);
    shortfalls = List.copyOf(shortfalls);
  }

  /** The same with one more thing said. */
  Fastened lacking(String more) {
    List<String> all = new ArrayList<>(shortfalls);
    all.add(more);
    return new Fastened(fasteners, all);
  }
}
