package sawstead.intake;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Finds the line of a file on which a place of the brief stands, for whoever finds fault with a
 * brief only later and knows the place but not the file.
 */
public final class BriefLines {

  private static final Pattern STEP = Pattern.compile("\\.?([^.\\[\\]]+)|\\[([0-9]{1,6})]");

  private BriefLines() {}

  /**
   * The line, counted from 1, of a place such as {@code station.ports[0].through}; where the file
   * does not write that key, the line of the section nearest to it; 0 when there is nothing of it,
   * or when the file cannot be read.
   */
  public static int lineOf(Path file, String place) {
    try {
      return lineOf(Files.readString(file, StandardCharsets.UTF_8), place);
    } catch (IOException unreadable) {
      return 0;
    }
  }

  /** The same for the text of a file. */
  public static int lineOf(String text, String place) {
    Item item;
    try {
      item = YamlTree.read(text);
    } catch (YamlException broken) {
      return 0;
    }
    int line = 0;
    Matcher steps = STEP.matcher(place);
    while (item != null && steps.find()) {
      Item next = null;
      if (item instanceof Item.Table table && steps.group(1) != null) {
        Item.Member member = table.members().get(steps.group(1));
        if (member != null) {
          line = member.keyLine();
          next = member.value();
        }
      } else if (item instanceof Item.Listing list && steps.group(2) != null) {
        int index = Integer.parseInt(steps.group(2));
        if (index < list.items().size()) {
          next = list.items().get(index);
          line = next.line();
        }
      }
      item = next;
    }
    return line;
  }
}
