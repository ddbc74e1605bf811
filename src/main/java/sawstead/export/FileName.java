package sawstead.export;

import java.nio.charset.StandardCharsets;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.text.Normalizer;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;

/**
 * The place of a file inside an output folder: folders and a name that every common file system
 * takes, and that cannot lead out of the folder.
 *
 * <p>The id {@code stand/leg-3-face} becomes {@code stl/stand/leg-3-face.stl}. A step (the text
 * between slashes) is refused when it is empty, {@code .} or {@code ..}; begins with a dot or a
 * space, or ends with one; holds a control character, an unpaired surrogate or one of {@code \ : *
 * ? " < > |}; is not in composed form (Unicode NFC, so that one name has one spelling); is a device
 * name such as {@code CON} or {@code com1.txt}; or takes more than {@value #STEP_BYTES} bytes in
 * UTF-8. More than {@value #MOST_STEPS} steps are refused too.
 *
 * @param steps folders from the outside in, then the file's name; at least one
 */
public record FileName(List<String> steps) {
  static final int STEP_BYTES = 120;
  static final int MOST_STEPS = 8;

  private static final String FORBIDDEN = "\\:*?\"<>|/";

  // Names that Windows keeps for devices, whatever the case and whatever follows the first dot.
  private static final Pattern DEVICE =
      Pattern.compile(
          "(CON|PRN|AUX|NUL|CONIN\\$|CONOUT\\$|(COM|LPT)[0-9\u00b9\u00b2\u00b3])\\s*(\\..*)?");

  /** Refuses with an {@link ExportException} that shows the name and what is wrong with it. */
  public FileName {
    steps = List.copyOf(steps);
    String whole = String.join("/", steps);
    if (steps.isEmpty()) {
      throw refusal("a file name is empty", whole);
    }
    if (steps.size() > MOST_STEPS) {
      throw refusal("a name has more than " + MOST_STEPS + " steps", whole);
    }
    for (String step : steps) {
      String fault = faultOf(step);
      if (fault != null) {
        throw refusal(fault, whole);
      }
    }
  }

  /**
   * The file for a body.
   *
   * @param folder the format's folder, {@code stl}
   * @param id the body's id, a path with forward slashes
   * @param extension without the dot
   */
  public static FileName of(String folder, String id, String extension) {
    return parse(folder + "/" + id + "." + extension);
  }

  /** A relative path with forward slashes, {@code report.json} or {@code dxf/stand/top.dxf}. */
  public static FileName parse(String path) {
    return new FileName(List.of(path.split("/", -1)));
  }

  /** The file's path below a folder. */
  Path below(Path folder) {
    try {
      Path path = folder;
      for (String step : steps) {
        path = path.resolve(step);
      }
      return path;
    } catch (InvalidPathException e) {
      // A Java runtime in a plain "C" locale cannot spell names beyond ASCII.
      throw refusal("this system cannot spell the name", toString());
    }
  }

  /** Two names with one key would be one file on a file system that does not see case. */
  String key() {
    return toString().toUpperCase(Locale.ROOT).toLowerCase(Locale.ROOT);
  }

  /** The relative path, with forward slashes. */
  @Override
  public String toString() {
    return String.join("/", steps);
  }

  private static String faultOf(String step) {
    if (step.isEmpty()) {
      return "a name has an empty step";
    }
    if (step.equals(".") || step.equals("..")) {
      return "a name leads through '" + step + "'";
    }
    if (step.startsWith(".") || step.endsWith(".")) {
      return "a step of a name begins or ends with a dot";
    }
    if (step.startsWith(" ") || step.endsWith(" ")) {
      return "a step of a name begins or ends with a space";
    }
    for (int point : step.codePoints().toArray()) {
      if (FORBIDDEN.indexOf(point) >= 0) {
        return "a name holds the character " + Character.toString(point);
      }
      if (isUnseen(point)) {
        return "a name holds the unseen character U+%04X".formatted(point);
      }
    }
    if (!Normalizer.isNormalized(step, Normalizer.Form.NFC)) {
      return "a name spells an accent as a character of its own";
    }
    if (DEVICE.matcher(step.toUpperCase(Locale.ROOT)).matches()) {
      return "a step of a name is one that some systems keep for a device";
    }
    int bytes = step.getBytes(StandardCharsets.UTF_8).length;
    if (bytes > STEP_BYTES) {
      return "a step of a name takes " + bytes + " bytes, more than " + STEP_BYTES;
    }
    return null;
  }

  private static boolean isUnseen(int point) {
    return switch (Character.getType(point)) {
      case Character.CONTROL,
          Character.FORMAT,
          Character.SURROGATE,
          Character.PRIVATE_USE,
          Character.UNASSIGNED,
          Character.LINE_SEPARATOR,
          Character.PARAGRAPH_SEPARATOR ->
          true;
      default -> false;
    };
  }

  private static ExportException refusal(String what, String name) {
    return new ExportException(
        what,
        shown(name),
        "use letters, digits, '-' and '_' in ids, with '/' between unit and part");
  }

  /** The name with unseen characters written out and its length kept in bounds. */
  private static String shown(String name) {
    StringBuilder text = new StringBuilder();
    name.codePoints()
        .limit(STEP_BYTES)
        .forEach(
            point -> {
              if (isUnseen(point)) {
                text.append("\\u%04x".formatted(point));
              } else {
                text.appendCodePoint(point);
              }
            });
    return text + (name.codePointCount(0, name.length()) > STEP_BYTES ? "..." : "");
  }
}
