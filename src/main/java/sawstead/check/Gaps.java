package sawstead.check;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import sawstead.solid.Body;
import sawstead.solid.FreeWay;
import sawstead.station.Part;
import sawstead.station.PartKind;

/**
 * The free ways of every envelope. A way ends where the envelope, grown along it, would be deeper
 * than the contact tolerance in another body, less the tolerance: of a face that meets a face
 * squarely, that is their distance. So growing it by the reported way and more than the tolerance
 * clashes, and by less it does not, however slanted the faces are that meet.
 */
final class Gaps {
  /** How far to look, mm. */
  static final double REACH = 500;

  private Gaps() {}

  /** The gaps of all envelopes, in the order of the parts. */
  static List<Gap> of(List<Part> parts, double contact) {
    return parts.stream()
        .filter(p -> p.kind() == PartKind.ENVELOPE && !p.isRoom())
        .map(p -> gap(p.body(), parts, contact))
        .toList();
  }

  private static Gap gap(Body envelope, List<Part> parts, double contact) {
    List<Optional<Gap.Free>> ways = new ArrayList<>();
    for (Way way : Way.values()) {
      ways.add(free(envelope, way, parts, contact));
    }
    return new Gap(envelope.id(), ways);
  }

  private static Optional<Gap.Free> free(Body envelope, Way way, List<Part> parts, double contact) {
    double least = REACH + contact;
    String to = null;
    for (Part part : nearestFirst(envelope, parts)) {
      double found = FreeWay.of(envelope, way.direction(), part.body(), contact, least);
      if (found < least) {
        least = found;
        to = part.id();
      }
    }
    return to == null
        ? Optional.empty()
        : Optional.of(new Gap.Free(Math.max(0, least - contact), to));
  }

  /**
   * The other parts; the nearest boxes first, so that the search soon has little left to look at.
   */
  private static List<Part> nearestFirst(Body envelope, List<Part> parts) {
    return parts.stream()
        .filter(part -> !part.id().equals(envelope.id()))
        .sorted(Comparator.comparingDouble(part -> part.body().box().distance(envelope.box())))
        .toList();
  }
}
