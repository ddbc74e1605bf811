package sawstead.intake;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import sawstead.brief.Brief;
import sawstead.measure.Unit;

/**
 * Reads a brief. All problems of a file are reported at once, except those that keep the rest from
 * being read (no file, no text, no YAML).
 */
public final class BriefReader {

  /** Largest file, bytes (1 MiB). */
  static final int LARGEST = 1 << 20;

  private static final String UNITS = "units";

  private BriefReader() {}

  /**
   * Reads a file.
   *
   * @param file the brief; its name is told in messages as given
   * @throws BriefException if it cannot be read or anything in it is wrong
   */
  public static Brief read(Path file) throws BriefException {
    String name = file.toString();
    if (Files.isDirectory(file)) {
      throw fault(name, "this is a folder, not a brief", "name the YAML file itself");
    }
    if (!Files.exists(file)) {
      throw fault(name, "there is no such file", "check the name and the folder you are in");
    }
    return read(name, bytes(name, file));
  }

  /** The bytes of a file, at most one more than may be. */
  static byte[] bytes(String name, Path file) throws BriefException {
    try (InputStream stream = Files.newInputStream(file)) {
      return stream.readNBytes(LARGEST + 1);
    } catch (IOException broken) {
      throw fault(name, "the file cannot be read", "check that you may read it");
    }
  }

  /**
   * Reads the bytes of a file.
   *
   * @param name what messages call the file
   * @throws BriefException if anything in it is wrong
   */
  public static Brief read(String name, byte[] bytes) throws BriefException {
    return read(name, bytes, new TreeSet<>());
  }

  /**
   * Reads the bytes of a file and tells which keys the mappers asked for.
   *
   * @param asked is filled with the keys, list indices left out
   */
  static Brief read(String name, byte[] bytes, Set<String> asked) throws BriefException {
    Item root;
    try {
      root = YamlTree.read(text(name, bytes));
    } catch (YamlException broken) {
      throw new BriefException(name, List.of(broken.problem()));
    }
    if (!(root instanceof Item.Table table)) {
      throw fault(
          name,
          "the file is " + root.kind() + ", not a brief",
          "write keys and values, such as `name: My station`");
    }
    Problems problems = new Problems();
    new SchemaCheck(BriefSchema.FILE, problems).check(table);
    asked.add(UNITS);
    Reading reading = new Reading(problems, units(table), asked, folder(name));
    Brief brief = new BriefMapper(Section.root(reading, table)).brief();
    if (!problems.isEmpty()) {
      throw new BriefException(name, problems.inOrder());
    }
    return brief;
  }

  static String text(String name, byte[] bytes) throws BriefException {
    if (bytes.length > LARGEST) {
      throw fault(
          name,
          "the file is larger than 1 MiB",
          "keep one brief in a file; most have some 100 lines");
    }
    try {
      String text = StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
      return text.startsWith("\ufeff") ? text.substring(1) : text;
    } catch (CharacterCodingException broken) {
      throw fault(
          name, "the file is not UTF-8 text", "save it as UTF-8 (plain text) and try again");
    }
  }

  /** The folder of a brief; the current one for a brief that is no file. */
  private static Path folder(String name) {
    try {
      Path parent = Path.of(name).getParent();
      return parent == null ? Path.of("") : parent;
    } catch (InvalidPathException noFile) {
      return Path.of("");
    }
  }

  /** Without units every length would be a problem; the schema has noted the one that matters. */
  private static Unit units(Item.Table table) {
    Item.Member member = table.members().get(UNITS);
    return member != null && member.value() instanceof Item.Scalar scalar
        ? Unit.of(scalar.text()).orElse(Unit.MM)
        : Unit.MM;
  }

  private static BriefException fault(String name, String what, String remedy) {
    return new BriefException(name, List.of(new BriefProblem(0, "", what, remedy)));
  }
}
