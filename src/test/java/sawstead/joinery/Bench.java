package sawstead.joinery;

import java.util.List;
import sawstead.solid.Axis;
import sawstead.solid.Body;
import sawstead.solid.Box;
import sawstead.solid.Vec;

/** Boards and shelves that the tests of this room share. */
final class Bench {
  /** Birch plywood of 18 mm, kg/m3 (REF-PLY-09). */
  static final double BIRCH = 685;

  private Bench() {}

  static Board board(String id, Axis through, double... lowHigh) {
    Vec low = new Vec(lowHigh[0], lowHigh[1], lowHigh[2]);
    Vec high = new Vec(lowHigh[3], lowHigh[4], lowHigh[5]);
    return Board.spanning(
        id,
        "birch-18",
        BIRCH,
        new Box(low, high),
        through,
        true,
        through == Axis.X ? Axis.Y : Axis.X);
  }

  /** What a small shop has: numbers 5 to 10, 16 to 64 mm, and pocket screws. */
  static ScrewShelf shelf() {
    return new ScrewShelf(
        List.of(
            screw(5, 16),
            screw(6, 16),
            screw(6, 25),
            screw(6, 32),
            screw(8, 32),
            screw(8, 45),
            screw(8, 50),
            screw(8, 64),
            screw(10, 50),
            new Screw(new ScrewGauge(7), 25.4, true),
            new Screw(new ScrewGauge(8), 31.75, true)));
  }

  static Screw screw(int gauge, double length) {
    return new Screw(new ScrewGauge(gauge), length, false);
  }

  static Fixings fixings() {
    return Fixings.of(shelf());
  }

  static FastenerGeometry look(Fastener fastener, Joined joined) {
    List<Board> boards =
        List.of(joined.a(), joined.b()).stream()
            .filter(b -> fastener.joins().contains(b.id()))
            .toList();
    List<Body> hardware =
        joined.bodies().stream().filter(b -> fastener.joins().contains(b.id())).toList();
    return new FastenerGeometry(fastener, boards, hardware);
  }
}
