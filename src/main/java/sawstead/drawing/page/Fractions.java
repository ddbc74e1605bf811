package sawstead.drawing.page;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Sets fractions as they stand on a rule: {@code 18-1/2 in} becomes 18 and a small 1 over a small
 * 2. Only where a unit follows, so that names such as {@code rack-1/2} stay as they are, or where
 * the slash is the fraction slash of Unicode.
 */
public final class Fractions {
  private static final Pattern FRACTION =
      Pattern.compile("(?<![\\w/-])(?:(\\d+)-)?(\\d+)(?:/(\\d+)(?=[\\s\u00a0]in\\b)|\u2044(\\d+))");

  /** The fraction slash of Unicode, which says that digits around it are a fraction. */
  public static final String SLASH = "\u2044";

  private static final String THIN = "\u2009";

  /** How a run of characters is set. */
  public enum Rise {
    PLAIN,
    ABOVE,
    BELOW
  }

  /**
   * Characters set alike.
   *
   * @param text the characters
   * @param rise how they are set
   */
  public record Run(String text, Rise rise) {}

  private Fractions() {}

  /** The runs of a line of text. */
  public static List<Run> runs(String line) {
    List<Run> runs = new ArrayList<>();
    Matcher fraction = FRACTION.matcher(line);
    int done = 0;
    while (fraction.find()) {
      String before = line.substring(done, fraction.start());
      String whole = fraction.group(1) == null ? "" : fraction.group(1);
      // A thin space, so that 35 and 5/16 do not read as 355/16 when the text is copied out.
      add(runs, before + (whole.isEmpty() ? "" : whole + THIN), Rise.PLAIN);
      add(runs, fraction.group(2), Rise.ABOVE);
      add(runs, SLASH, Rise.PLAIN);
      add(runs, fraction.group(3) != null ? fraction.group(3) : fraction.group(4), Rise.BELOW);
      done = fraction.end();
    }
    add(runs, line.substring(done), Rise.PLAIN);
    return runs;
  }

  private static void add(List<Run> runs, String text, Rise rise) {
    if (!text.isEmpty()) {
      runs.add(new Run(text, rise));
    }
  }
}
