package sawstead.preview.text;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileTime;
import java.util.UUID;

/**
 * The text of a file as an editor has it (lines end in LF), and how to put it back as it was.
 *
 * @param path of the file
 * @param text without byte order mark, lines ending in LF
 * @param read the text as it was read, each line with the end it has in the file
 * @param mark whether the file begins with a byte order mark
 */
public record BriefFile(Path path, String text, String read, boolean mark) {
  private static final String MARK = "\ufeff";
  private static final String CRLF = "\r\n";

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
    return new BriefFile(path, plain(text), text, mark);
  }

  /** A file that was not read, as if it were empty. */
  public static BriefFile empty(Path path) {
    return new BriefFile(path, "", "", false);
  }

  private static String plain(String text) {
    return text.replace(CRLF, "\n");
  }

  /** The same file with another text. */
  public BriefFile with(String other) {
    return new BriefFile(path, other, read, mark);
  }

  /**
   * The text with the line ends of the file: around what was changed as they were, and there like
   * the first.
   */
  private String raw() {
    String was = plain(read);
    int most = Math.min(was.length(), text.length());
    int head = 0;
    while (head < most && was.charAt(head) == text.charAt(head)) {
      head++;
    }
    int tail = 0;
    while (tail < most - head
        && was.charAt(was.length() - 1 - tail) == text.charAt(text.length() - 1 - tail)) {
      tail++;
    }
    int first = read.indexOf('\n');
    boolean crlf = first > 0 && read.charAt(first - 1) == '\r';
    String middle = text.substring(head, text.length() - tail);
    return read.substring(0, inFile(head))
        + (crlf ? middle.replace("\n", CRLF) : middle)
        + read.substring(inFile(was.length() - tail));
  }

  /** Where a place of the plain text as it was read stands in the file. */
  private int inFile(int place) {
    int at = 0;
    for (int k = 0; k < place; k++) {
      at += read.startsWith(CRLF, at) ? 2 : 1;
    }
    return at;
  }

  /**
   * Writes the file whole or not at all. A link stays a link, and whoever could read the file still
   * can.
   *
   * @throws IOException if it cannot or may not be written, or a folder is in its place
   */
  public void write() throws IOException {
    String raw = (mark ? MARK : "") + raw();
    Path target = target();
    if (Files.isDirectory(target)) {
      throw new FileSystemException(target.toString(), null, "it is a folder");
    }
    boolean there = Files.exists(target);
    if (there && !Files.isWritable(target)) {
      throw new AccessDeniedException(target.toString());
    }
    Path draft = target.resolveSibling(".brief-" + UUID.randomUUID() + ".yaml");
    try {
      Files.writeString(draft, raw, StandardCharsets.UTF_8, StandardOpenOption.CREATE_NEW);
      if (there && Files.getFileStore(target).supportsFileAttributeView("posix")) {
        Files.setPosixFilePermissions(draft, Files.getPosixFilePermissions(target));
      }
      Files.move(draft, target, StandardCopyOption.REPLACE_EXISTING);
    } finally {
      Files.deleteIfExists(draft);
    }
  }

  /** Where the file itself is, also behind a link whose file is gone. */
  private Path target() throws IOException {
    Path place = path.toAbsolutePath();
    if (Files.exists(place)) {
      return place.toRealPath();
    }
    return Files.isSymbolicLink(place)
        ? place.resolveSibling(Files.readSymbolicLink(place))
        : place;
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
