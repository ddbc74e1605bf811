package sawstead.solid;

import java.util.List;

final class Chords {
  private Chords() {}

  static List<Chord> along(Body body, Vec from, Vec unit) {
    throw new UnsupportedOperationException("lands with the next commits");
  }
}
