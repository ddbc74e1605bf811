package sawstead.check;

import java.util.Comparator;
import java.util.List;
import sawstead.solid.Body;
import sawstead.solid.Overlap;

/** Finds every pair of bodies that overlap by more than the contact tolerance. Certified. */
final class Clashes {
  private Clashes() {}

  static List<Clash> in(List<Body> bodies, double contact) {
    return Overlap.pairs(bodies, contact, (a, b) -> false).stream()
        .map(Clashes::clash)
        .sorted(Comparator.comparing(Clash::a).thenComparing(Clash::b))
        .toList();
  }

  private static Clash clash(Overlap overlap) {
    String a = overlap.a().id();
    String b = overlap.b().id();
    boolean inOrder = a.compareTo(b) < 0;
    return new Clash(
        inOrder ? a : b, inOrder ? b : a, overlap.volume(), overlap.depth(), overlap.centroid());
  }
}
