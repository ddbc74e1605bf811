package sawstead.brief;

import static java.util.Objects.requireNonNull;

import sawstead.measure.Measured;

/**
 * What stands behind the blade to keep the cut open.
 *
 * @param kind riving knife or splitter
 * @param thickness mm
 * @param belowCrown how far its top lies below the blade's crown, mm; negative above it
 * @param reach from the arbor to its rear edge, mm
 */
public record Knife(KnifeKind kind, Measured thickness, Measured belowCrown, Measured reach) {
  public Knife {
    requireNonNull(kind, "kind");
    requireNonNull(thickness, "thickness");
    requireNonNull(belowCrown, "belowCrown");
    requireNonNull(reach, "reach");
  }
}
