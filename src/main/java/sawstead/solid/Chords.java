package sawstead.solid;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Cuts a line by the planes of each piece and joins the stretches. */
final class Chords {
  /** Slower than this, mm per mm, a line runs along a plane: 1e-7 mm over 100 m. */
  private static final double PARALLEL = 1e-12;

  private Chords() {}

  static List<Chord> along(Body body, Vec from, Vec unit) {
    List<Chord> found = new ArrayList<>();
    for (Piece piece : body.cover(hole -> meets(hole.box(), from, unit))) {
      Chord chord = through(piece, from, unit);
      if (chord != null) {
        found.add(chord);
      }
    }
    found.sort(Comparator.comparingDouble(Chord::from));
    List<Chord> joined = new ArrayList<>();
    for (Chord chord : found) {
      int last = joined.size() - 1;
      if (last >= 0 && chord.from() <= joined.get(last).to() + Cover.SLACK) {
        Chord before = joined.get(last);
        joined.set(last, new Chord(before.from(), Math.max(before.to(), chord.to())));
      } else {
        joined.add(chord);
      }
    }
    return joined;
  }

  /** True if the line comes within 1 mm of a box, or nearly so: it errs on the side of true. */
  private static boolean meets(Box box, Vec from, Vec unit) {
    Vec off = box.centre().minus(from);
    Vec across = off.minus(unit.scale(off.dot(unit)));
    return across.length() <= box.size().length() / 2 + 1;
  }

  /** The stretch of the line in one piece; null if it is none or no longer than the slack. */
  private static Chord through(Piece piece, Vec from, Vec unit) {
    double in = Double.NEGATIVE_INFINITY;
    double out = Double.POSITIVE_INFINITY;
    double[] n = piece.planes;
    for (int f = 0; f < n.length; f += 4) {
      double away = n[f] * from.x() + n[f + 1] * from.y() + n[f + 2] * from.z() - n[f + 3];
      double rate = n[f] * unit.x() + n[f + 1] * unit.y() + n[f + 2] * unit.z();
      if (Math.abs(rate) < PARALLEL) {
        if (away > 0) {
          return null;
        }
      } else if (rate < 0) {
        in = Math.max(in, -away / rate);
      } else {
        out = Math.min(out, -away / rate);
      }
    }
    return out - in > Cover.SLACK ? new Chord(in, out) : null;
  }
}
