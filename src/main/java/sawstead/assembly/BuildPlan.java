package sawstead.assembly;

import java.util.List;

/**
 * The order in which a person builds a station.
 *
 * @param steps in order
 * @param drivings every fastener once, by id
 * @param stuck names of the things for which no order was found, with what is in the way of each;
 *     empty when there is an order
 * @param exits how what is kept in the finished station comes out of it, by id
 */
public record BuildPlan(
    List<BuildStep> steps, List<Driving> drivings, List<Stuck> stuck, List<Exit> exits) {

  /**
   * A thing for which no way was found.
   *
   * @param name of the thing
   * @param behind what is in its way along the direction that lacks the least room
   * @param lacks how much room is missing there, mm; infinite when a wall stands across every way
   * @param opening which way the room is missing, in words
   * @param decided whether it is proven to have no way without tilting past what is left
   */
  public record Stuck(
      String name, List<String> behind, double lacks, String opening, boolean decided) {
    public Stuck {
      behind = List.copyOf(behind);
    }
  }

  public BuildPlan {
    steps = List.copyOf(steps);
    drivings = List.copyOf(drivings);
    stuck = List.copyOf(stuck);
    exits = List.copyOf(exits);
  }
}
