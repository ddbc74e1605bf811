package sawstead.assembly;

import java.util.List;
import sawstead.solid.Vec;

/**
 * A turn of work on a bench, where nothing else of the station is in the way.
 *
 * @param places ids of what is put on
 * @param direction unit vector along which it comes, in the frame of the station although it may
 *     lie on the bench as it likes; zero for what lies there first
 * @param fasteners ids of those driven then
 */
public record BenchStep(List<String> places, Vec direction, List<String> fasteners) {
  public BenchStep {
    places = List.copyOf(places);
    fasteners = List.copyOf(fasteners);
  }
}
