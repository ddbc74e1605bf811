package sawstead.check;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import sawstead.intake.BriefException;
import sawstead.intake.BriefReader;
import sawstead.station.Station;
import sawstead.station.unit.Units;

/** The demo briefs, as they are or with one line changed. */
final class Models {
  private Models() {}

  static Station station(String name) {
    return changed(name, "", "");
  }

  /** The station of a demo in whose text one phrase is replaced; fails when it is not there. */
  static Station changed(String name, String phrase, String by) {
    try {
      Path file = Path.of("models", name + ".yaml");
      String text = Files.readString(file);
      if (!text.contains(phrase)) {
        throw new AssertionError(name + " has no: " + phrase);
      }
      byte[] bytes =
          (phrase.isEmpty() ? text : text.replace(phrase, by)).getBytes(StandardCharsets.UTF_8);
      return Units.station(BriefReader.read(file.toString(), bytes));
    } catch (IOException | BriefException e) {
      throw new AssertionError(e.getMessage(), e);
    }
  }
}
