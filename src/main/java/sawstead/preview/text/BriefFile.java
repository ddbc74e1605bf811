package sawstead.preview.text;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.FileTime;

/**
 * The text of a file as an editor has it (lines end in LF), and how to put it back as it was.
 *
 * @param path of the file
 * @param text without byte order mark, lines ending in LF
 * @param crlf whether the file's lines end in CR LF
 * @param mark whether the file begins with a byte order mark
 */
public record BriefFile(Path path, String text, boolean crlf, boolean mark) {
  private static final String MARK = "\ufeff";

  /** Largest file that is opened, bytes: four times what a brief may have. */
  private static final long LARGEST = 4L << 20;

  /**
   * Reads a file.
   *
   * @throws IOException if it cannot be read, or is no text of a sane size
   */
  public static BriefFile read(Path path) throws IOException {
    if (Files.size(path) > LARGEST) {
      throw new IOException("the file is larger than 4 MiB");
    }
    String raw = Files.readString(path, StandardCharsets.UTF_8);
    boolean mark = raw.startsWith(MARK);
    String text = mark ? raw.substring(1) : raw;
    boolean crlf = text.contains("\r\n");
    return new BriefFile(path, text.replace("\r\n", "\n"), crlf, mark);
  }

  /** The same file with another text. */
  public BriefFile with(String other) {
    return new BriefFile(path, other, crlf, mark);
  }

  /** Writes the file whole or not at all. */
  public void write() throws IOException {
    String raw = (mark ? MARK : "") + (crlf ? text.replace("\n", "\r\n") : text);
    Path target = path.toAbsolutePath();
    Path draft = Files.createTempFile(target.getParent(), ".brief", ".yaml");
    try {
      Files.writeString(draft, raw, StandardCharsets.UTF_8);
      Files.move(draft, target, StandardCopyOption.REPLACE_EXISTING);
    } finally {
      Files.deleteIfExists(draft);
    }
  }

  /** When it was last written; null if it is not there. */
  static FileTime written(Path path) {
    try {
      return Files.getLastModifiedTime(path);
    } catch (IOException gone) {
      return null;
    }
  }
}
