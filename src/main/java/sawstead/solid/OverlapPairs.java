package sawstead.solid;

import java.util.List;
import java.util.Optional;
import java.util.function.BiPredicate;

final class OverlapPairs {
  private OverlapPairs() {}

  static Optional<Overlap> between(Body a, Body b, double touch) {
    throw new UnsupportedOperationException("lands with the next commits");
  }

  static List<Overlap> among(List<Body> bodies, double tolerance, BiPredicate<Body, Body> skip) {
    throw new UnsupportedOperationException("lands with the next commits");
  }
}
