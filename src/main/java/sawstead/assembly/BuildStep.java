package sawstead.assembly;

import java.util.List;
import sawstead.solid.Vec;

/**
 * A step of the build: some things come to their place, along one way, and are fixed.
 *
 * @param number from 1
 * @param name the unit or thing, for people
 * @param places ids of the parts that it places
 * @param fixing how, in the words of the trade
 * @param direction unit vector of the last leg of the way, station frame; zero if no way was found
 * @param path the way from outside, one translation after the other, mm
 * @param bench how they are put together before; empty for a single thing
 * @param fasteners ids of all that are driven in this step, on the bench or in place
 * @param tools words of the tools that it takes, on the bench or in place
 * @param mass of what is lifted, kg
 * @param hands people that it takes
 * @param cautions what to mind, one sentence each
 */
public record BuildStep(
    int number,
    String name,
    List<String> places,
    String fixing,
    Vec direction,
    List<Vec> path,
    List<BenchStep> bench,
    List<String> fasteners,
    List<String> tools,
    double mass,
    int hands,
    List<String> cautions) {
  public BuildStep {
    places = List.copyOf(places);
    path = List.copyOf(path);
    bench = List.copyOf(bench);
    fasteners = List.copyOf(fasteners);
    tools = List.copyOf(tools);
    cautions = List.copyOf(cautions);
  }

  /** The same with other cautions. */
  BuildStep cautioned(List<String> others) {
    return new BuildStep(
        number, name, places, fixing, direction, path, bench, fasteners, tools, mass, hands,
        others);
  }
}
