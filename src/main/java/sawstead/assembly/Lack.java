package sawstead.assembly;

import java.util.BitSet;
import java.util.List;
import sawstead.solid.Body;
import sawstead.solid.Box;
import sawstead.solid.Boxing;
import sawstead.solid.Vec;

/**
 * The smallest change that frees a straight way: by how much what is in the way would have to give.
 * Judged by boxes around the pieces, so it may ask for a little too much where something is round.
 *
 * @param missing the room that is missing, mm; infinite when a wall stands across every way
 * @param words which way it is missing
 * @param obstacles names of what is in the way
 */
record Lack(double missing, String words, List<String> obstacles) {
  private static final List<String> WORDS =
      List.of("wider", "wider", "deeper", "deeper", "higher", "lower");

  Lack {
    obstacles = List.copyOf(obstacles);
  }

  static Lack least(Stage stage, Blocking blocking, int number, BitSet others) {
    BitSet self = new BitSet();
    self.set(number);
    Lack best = new Lack(Double.POSITIVE_INFINITY, "", List.of());
    for (Vec direction : Exits.DIRECTIONS) {
      BitSet inTheWay = blocking.blockers(self, direction, others);
      double worst = 0;
      String words = "";
      for (int t = inTheWay.nextSetBit(0); t >= 0; t = inTheWay.nextSetBit(t + 1)) {
        double[] sides = sides(stage.thing(number), stage.thing(t), direction, stage.play());
        int least = -1;
        for (int s = 0; s < sides.length; s++) {
          if (sides[s] > 0 && (least < 0 || sides[s] < sides[least])) {
            least = s;
          }
        }
        double missing = least < 0 ? Double.POSITIVE_INFINITY : sides[least];
        if (missing > worst) {
          worst = missing;
          words = least < 0 ? "" : WORDS.get(least);
        }
      }
      if (worst < best.missing || best.obstacles.isEmpty()) {
        best = new Lack(worst, words, stage.names(inTheWay));
      }
    }
    return best;
  }

  /** How far the obstacle would have to go to +x, -x, +y, -y, +z, -z; 0 along the way itself. */
  private static double[] sides(Thing mover, Thing obstacle, Vec direction, double play) {
    double[] sides = new double[6];
    for (Body a : mover.bodies()) {
      for (Box m : Boxing.of(a).outer()) {
        for (Body b : obstacle.bodies()) {
          for (Box o : Boxing.of(b).outer()) {
            if (passes(m, o, direction, play)) {
              double[] low = {
                m.high().x() - o.low().x(), m.high().y() - o.low().y(), m.high().z() - o.low().z()
              };
              double[] high = {
                o.high().x() - m.low().x(), o.high().y() - m.low().y(), o.high().z() - m.low().z()
              };
              double[] along = {direction.x(), direction.y(), direction.z()};
              for (int k = 0; k < 3; k++) {
                if (along[k] == 0) {
                  sides[2 * k] = Math.max(sides[2 * k], low[k]);
                  sides[2 * k + 1] = Math.max(sides[2 * k + 1], high[k]);
                }
              }
            }
          }
        }
      }
    }
    return sides;
  }

  /** Whether an axis-parallel way of one box runs into the other. */
  private static boolean passes(Box m, Box o, Vec direction, double play) {
    Vec by = direction.scale(Blocking.FAR);
    Box swept = m.union(new Box(m.low().plus(by), m.high().plus(by)));
    return swept.low().x() + play < o.high().x()
        && o.low().x() + play < swept.high().x()
        && swept.low().y() + play < o.high().y()
        && o.low().y() + play < swept.high().y()
        && swept.low().z() + play < o.high().z()
        && o.low().z() + play < swept.high().z();
  }
}
