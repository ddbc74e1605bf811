package sawstead.export.report;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import sawstead.check.Passage;
import sawstead.check.Report;
import sawstead.solid.Motion;
import sawstead.solid.Slide;
import sawstead.solid.Turn;
import sawstead.solid.Vec;
import sawstead.station.Part;
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
    List<Part> parts =
        passage.mover().moves().stream().flatMap(id -> station.part(id).stream()).toList();
    return parts.isEmpty() ? Vec.ZERO : parts.get(0).body().centroid();
  }

  private static Vec direction(Motion motion) {
    return motion instanceof Turn turn ? turn.direction() : ((Slide) motion).direction();
  }
}
