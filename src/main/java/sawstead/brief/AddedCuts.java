package sawstead.brief;

import static java.util.Objects.requireNonNull;

import java.util.List;

/**
 * Further cuts in a panel of the station, in that panel's own frame.
 *
 * @param panel its id
 * @param cuts what is taken away
 */
public record AddedCuts(String panel, List<Cut> cuts) {
  public AddedCuts {
    requireNonNull(panel, "panel");
    cuts = List.copyOf(cuts);
  }
}
