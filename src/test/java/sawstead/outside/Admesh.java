package sawstead.outside;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What {@code admesh} found in an STL file.
 *
 * @param facets number of facets
 * @param volume mm3
 * @param normalsFixed facets whose normal it would write otherwise
 * @param defects every other count of its report that is not zero, with its name
 */
public record Admesh(int facets, double volume, int normalsFixed, List<String> defects) {
  private static final List<String> COUNTS =
      List.of(
          "Total disconnected facets",
          "Degenerate facets",
          "Edges fixed",
          "Facets removed",
          "Facets added",
          "Facets reversed",
          "Backwards edges");

  /** Runs all of its checks on a file; {@code admesh} must exist, see {@link OutsideTool}. */
  public static Admesh of(Path file) {
    String text = OutsideTool.admesh(file).text();
    List<String> defects = new ArrayList<>();
    for (String count : COUNTS) {
      // Some counts have a second column, after processing; what matters is what was in the file.
      double value = number(text, count);
      if (value != 0) {
        defects.add(count + ": " + (int) value);
      }
    }
    return new Admesh(
        (int) number(text, "Number of facets"),
        number(text, "Volume"),
        (int) number(text, "Normals fixed"),
        defects);
  }

  private static double number(String text, String name) {
    Matcher found = Pattern.compile(Pattern.quote(name) + "\\s*:\\s*(-?[0-9.eE+-]+)").matcher(text);
    if (!found.find()) {
      throw new AssertionError("admesh did not print '" + name + "':\n" + text);
    }
    return Double.parseDouble(found.group(1));
  }
}
