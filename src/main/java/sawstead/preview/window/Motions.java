package sawstead.preview.window;

import java.util.Map;
import sawstead.preview.scene.Glow;
import sawstead.preview.tape.Run;

/** What lights up while something moves. */
final class Motions {
  private Motions() {}

  /** The two that meet, once the thumb has come to the first contact; else nothing. */
  static Map<String, Glow> met(Run run, double at) {
    return run.contact()
        .filter(c -> Math.abs(at - run.from()) >= Math.abs(c.at() - run.from()) - 1e-9)
        .filter(c -> c.at() != run.start() || at != run.start())
        .map(c -> Map.of(c.mover(), Glow.STOP, c.with(), Glow.STOP))
        .orElse(Map.of());
  }
}
