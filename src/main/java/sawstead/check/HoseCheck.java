package sawstead.check;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import sawstead.brief.DustPort;
import sawstead.brief.Vac;
import sawstead.solid.Body;
import sawstead.solid.Box;
import sawstead.solid.Vec;
import sawstead.station.Site;

/**
 * The vac's hose reaches from the vac through its hole to the saw's dust port: {@code hose-short}
 * (mind), and the slack as a margin.
 *
 * <p>Straight from the port's mouth to the hole and from there to the far corner of the vac's top,
 * wherever on it the inlet is, and {@link #BENDS} bend radii more for its curves. Conservative. The
 * port stays where it is when the blade tilts, and no lid moves the hose: both swing clear of it or
 * are told of as motions that meet it.
 */
final class HoseCheck implements Check {
  /** Bend radii that the curves at port, hole and inlet take (common practice, no source). */
  static final double BENDS = 2;

  @Override
  public Outcome judge(Scene scene) {
    Optional<Site> site = scene.station().site();
    Optional<Body> hose = scene.body("vac/hose");
    Optional<Body> port = scene.body("saw/dust-port");
    Optional<Body> body = scene.body("vac/body");
    if (Stream.of(hose, port, body).anyMatch(Optional::isEmpty)) {
      return Outcome.of(List.of());
    }
    Vac vac = site.flatMap(s -> s.brief().vac()).orElseThrow();
    DustPort dust = site.get().saw().dust().orElseThrow();
    Vec mouth = port.get().placement().apply(new Vec(0, 0, dust.out().nominal()));
    Box passing = hose.get().box();
    double above = mouth.distance(at(passing, passing.high().z()));
    Box inlet = body.get().box();
    double below = 0;
    for (double x : new double[] {inlet.low().x(), inlet.high().x()}) {
      for (double y : new double[] {inlet.low().y(), inlet.high().y()}) {
        Vec corner = new Vec(x, y, inlet.high().z());
        below = Math.max(below, corner.distance(at(passing, passing.low().z())));
      }
    }
    double needs = above + passing.size().z() + below + BENDS * vac.hose().bend().nominal();
    double has = vac.hose().length().low();
    Outcome.Notes notes = new Outcome.Notes();
    notes.add(
        Margin.length("hose-slack", "hose to the dust port", List.of("vac/hose"), has, needs));
    if (has < needs) {
      notes.add(
          Finding.mind(
              "hose-short",
              List.of("vac/hose", "saw/dust-port"),
              mouth,
              "the vac's hose is "
                  + scene.words().length(needs - has)
                  + " too short to reach the dust port through its hole with easy bends",
              "use a hose at least " + scene.words().atLeast(needs - has) + " longer"));
    }
    return notes.outcome();
  }

  private static Vec at(Box upright, double z) {
    return new Vec(upright.centre().x(), upright.centre().y(), z);
  }
}
