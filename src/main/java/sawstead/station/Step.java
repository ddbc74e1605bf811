package sawstead.station;

import java.util.List;
import sawstead.solid.Vec;

/**
 * A step of the build.
 *
 * @param number from 1
 * @param places ids of what it places
 * @param fixing how, in the words of the trade
 * @param direction unit vector along which the parts come, station frame
 * @param cautions what to mind, one sentence each
 */
public record Step(
    int number, List<String> places, String fixing, Vec direction, List<String> cautions) {
  public Step {
    places = List.copyOf(places);
    cautions = List.copyOf(cautions);
  }
}
