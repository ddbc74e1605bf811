package sawstead.joinery;

import java.util.Random;
import sawstead.solid.Axis;
import sawstead.solid.Box;
import sawstead.solid.Vec;

/**
 * Two random boards that meet, any way round. They are made in a plain frame (0 square to the
 * second board, 1 across the first, 2 along the joint) and then turned and mirrored so that each of
 * these lies along any station axis.
 */
final class RandomPair {
  private final Random random;
  private final Axis[] axes = Axis.values();
  private final boolean[] flipped = new boolean[3];
  private final Vec shift;

  RandomPair(Random random) {
    this.random = random;
    for (int i = 2; i > 0; i--) {
      int k = random.nextInt(i + 1);
      Axis other = axes[i];
      axes[i] = axes[k];
      axes[k] = other;
    }
    for (int i = 0; i < 3; i++) {
      flipped[i] = random.nextBoolean();
    }
    shift = new Vec(range(-500, 500), range(-500, 500), range(0, 900));
  }

  /** Station axis of a plain axis. */
  Axis axis(int plain) {
    return axes[plain];
  }

  /** True if growing plain coordinates are growing station coordinates. */
  boolean isPlus(int plain) {
    return !flipped[plain];
  }

  double range(double from, double to) {
    return from + (to - from) * random.nextDouble();
  }

  /** A board that fills a plain box, its thickness along a plain axis. */
  Board board(String id, int through, double... lowHigh) {
    Vec one = shift;
    Vec other = shift;
    for (int i = 0; i < 3; i++) {
      double sign = flipped[i] ? -1 : 1;
      one = one.plus(axes[i].unit().scale(sign * lowHigh[i]));
      other = other.plus(axes[i].unit().scale(sign * lowHigh[i + 3]));
    }
    Box box = new Box(one, one).union(new Box(other, other));
    Axis grain = axes[(through + 1 + random.nextInt(2)) % 3];
    return Board.spanning(
        id, "ply", range(450, 750), box, axes[through], random.nextBoolean(), grain);
  }

  /** Edge of {@code guest} on the face of {@code host}, at least 60 mm long. */
  Board[] edgeOnFace() {
    double host = range(11, 25);
    double guest = range(11, 25);
    double across = range(guest + 1, 400);
    double at = random.nextInt(3) == 0 ? 0 : range(0, across - guest);
    double length = range(60, 700);
    double from = random.nextBoolean() ? 0 : range(-100, 100);
    return new Board[] {
      board("guest", 1, host, at, from, host + range(60, 500), at + guest, from + length),
      board("host", 0, 0, 0, 0, host, across, Math.max(from + 60, range(100, 700)))
    };
  }

  /** Edge of {@code guest} on the face of {@code host}, flush with an edge of the host. */
  Board[] corner() {
    double host = range(11, 25);
    double guest = range(11, 25);
    double across = range(guest + 30, 400);
    double at = random.nextBoolean() ? 0 : across - guest;
    double length = range(60, 700);
    return new Board[] {
      board("guest", 1, host, at, 0, host + range(60, 500), at + guest, length),
      board("host", 0, 0, 0, 0, host, across, length)
    };
  }

  /** Face of {@code over} on the face of {@code under}. */
  Board[] lap() {
    double one = range(11, 25);
    double other = range(11, 25);
    double width = range(50, 300);
    return new Board[] {
      board("over", 0, other, 0, 0, other + one, width, range(60, 600)),
      board("under", 0, 0, range(-100, 0), range(-100, 0), other, width + 5, range(100, 600))
    };
  }
}
