package sawstead.station.unit;

import java.util.ArrayList;
import java.util.List;
import sawstead.brief.Brief;
import sawstead.brief.Side;
import sawstead.station.Area;
import sawstead.station.SawPlace;

/**
 * Where on the floor plan something is kept that is not fixed to the station: beside all that it
 * takes up, away from the vac's way out; nearer, on the other side or behind where a wall of the
 * room leaves no place there. Lengths mm, station frame.
 *
 * @param brief the brief
 * @param place where the saw stands
 */
record Beside(Brief brief, SawPlace place) {

  /** Free floor between the station and what is kept beside it. */
  private static final double ASIDE = 300;

  /** The same where walls are near. */
  private static final double CLOSE = 60;

  /**
   * A free place.
   *
   * @param width along x
   * @param front nearest to the operator, where it is kept at a side
   * @param depth along y
   * @param further away than the first thing that is kept there
   */
  Area of(double width, double front, double depth, double further) {
    boolean atRight =
        brief.station().flatMap(s -> s.stand().vacSide()).filter(s -> s == Side.LEFT).isPresent();
    List<Area> places = new ArrayList<>();
    for (double away : new double[] {ASIDE, CLOSE}) {
      places.add(at(atRight, width, front, depth, further + away));
      places.add(at(!atRight, width, front, depth, further + away));
    }
    double rear = place.taken().rear() + ASIDE + further;
    places.add(new Area(-width / 2, width / 2, rear, rear + depth));
    Area inside = brief.room().map(RoomUnit::inside).orElse(places.get(0));
    return places.stream().filter(inside::holds).findFirst().orElse(places.get(0));
  }

  private Area at(boolean atRight, double width, double front, double depth, double away) {
    Area taken = place.taken();
    return atRight
        ? new Area(taken.right() + away, taken.right() + away + width, front, front + depth)
        : new Area(taken.left() - away - width, taken.left() - away, front, front + depth);
  }
}
