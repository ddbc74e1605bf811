package sawstead.export.report;

import java.io.IOException;
import java.util.Map;
import java.util.Optional;
import sawstead.check.Passage;
import sawstead.check.Report;
import sawstead.solid.Motion;
import sawstead.solid.Slide;
import sawstead.solid.Turn;
import sawstead.solid.Vec;
import sawstead.station.Setting;
import sawstead.station.Situation;
import sawstead.station.Station;

/** {@code motions}: what moves, how far, and what it meets. */
final class MotionSection {
  private MotionSection() {}

  static void write(Report report, Json json) throws IOException {
    json.objects("motions", report.passages(), passage -> write(report.station(), passage, json));
  }

  private static void write(Station station, Passage passage, Json json) throws IOException {
    Motion motion = passage.mover().motion();
    json.text("id", passage.mover().id());
    json.text("kind", motion instanceof Slide ? "slide" : "turn");
    json.texts("moves", passage.mover().moves());
    json.openObject("axis");
    json.vec("at", at(station, passage));
    json.vec("direction", direction(motion));
    json.close();
    json.number("from", motion.from());
    json.number("to", motion.to());
    json.number("rest", motion.rest());
    json.list("contacts", passage.mover().contacts(), c -> json.pair(c.a(), c.b()));
    if (passage.leastClearance().isPresent()) {
      json.number("leastClearance", passage.leastClearance().get());
    } else {
      json.nothing("leastClearance");
    }
    writeContact(passage.firstContact(), json);
    json.texts("after", passage.after());
    write(passage.mover().setting(), json);
  }

  /** How everything stands meanwhile; guests are placed as they are at the motion's rest. */
  private static void write(Setting setting, Json json) throws IOException {
    json.numbers("set", setting.set().columnMajor());
    json.texts("aside", setting.aside());
    json.openObject("others");
    for (Map.Entry<String, Double> other : setting.others().entrySet()) {
      json.number(other.getKey(), other.getValue());
    }
    json.close();
    json.objects("guests", setting.guests(), guest -> BodySection.write(guest, json));
  }

  private static void writeContact(Optional<Passage.Contact> contact, Json json)
      throws IOException {
    if (contact.isEmpty()) {
      json.nothing("firstContact");
      return;
    }
    json.openObject("firstContact");
    json.text("with", contact.get().with());
    json.text("mover", contact.get().mover());
    json.number("at", contact.get().at());
    json.vec("point", contact.get().point());
    json.close();
  }

  /** A point of the axis: of a turn its own; a slide has none, so the centroid of what slides. */
  private static Vec at(Station station, Passage passage) {
    if (passage.mover().motion() instanceof Turn turn) {
      return turn.at();
    }
    return Situation.of(station, passage.mover()).moved().get(0).centroid();
  }

  private static Vec direction(Motion motion) {
    return motion instanceof Turn turn ? turn.direction() : ((Slide) motion).direction();
  }
}
