package sawstead.intake;

import java.util.Iterator;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.api.lowlevel.Parse;
import org.snakeyaml.engine.v2.events.Event;

/** The events of a YAML text: the one way in which texts of briefs are parsed. */
final class YamlEvents {
  private YamlEvents() {}

  /**
   * The events, comments left out.
   *
   * <p>The parser's buffer holds the whole text: where it ends inside a letter that is two chars
   * wide, the parser reads past its end and throws.
   */
  static Iterator<Event> of(String text) {
    LoadSettings settings =
        LoadSettings.builder()
            .setLabel("brief")
            .setCodePointLimit(Integer.MAX_VALUE)
            .setBufferSize(text.length() + 1)
            .build();
    Iterator<Event> all = new Parse(settings).parseString(text).iterator();
    return new Iterator<>() {
      @Override
      public boolean hasNext() {
        return all.hasNext();
      }

      @Override
      public Event next() {
        Event event = all.next();
        while (event.getEventId() == Event.ID.Comment) {
          event = all.next();
        }
        return event;
      }
    };
  }
}
