package sawstead.intake;

import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

/** Refuses ids that occur twice among siblings, or that no file could be called. */
final class Duplicates {

  /** Names that one operating system keeps for devices; files of panels are named by their ids. */
  private static final Set<String> DEVICES =
      Set.of(
          "con", "prn", "aux", "nul", "com1", "com2", "com3", "com4", "com5", "com6", "com7",
          "com8", "com9", "lpt1", "lpt2", "lpt3", "lpt4", "lpt5", "lpt6", "lpt7", "lpt8", "lpt9");

  private final Map<String, Integer> lines = new HashMap<>();

  /** The id under a key; a problem is noted if it was used before. */
  String fresh(Section section, String key) {
    String id = section.text(key).orElse("");
    Integer earlier = id.isEmpty() ? null : lines.putIfAbsent(id, section.line());
    if (earlier != null) {
      section.problem(
          key,
          "`" + id + "` is used twice, first in line " + earlier,
          "give each one an id of its own");
    }
    for (String part : id.split("/")) {
      if (isDevice(part)) {
        section.problem(
            key,
            "`" + id + "` is a name that some computers keep for themselves",
            "choose another id");
      }
    }
    return id;
  }

  /** Whether a file of that name cannot be made everywhere. */
  static boolean isDevice(String name) {
    return DEVICES.contains(name.toLowerCase(Locale.ROOT));
  }
}
