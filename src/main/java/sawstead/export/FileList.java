package sawstead.export;

import java.io.IOException;
import java.nio.charset.MalformedInputException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;

/**
 * The file that marks a folder as ours and names all that we wrote into it, so that a later build
 * never deletes what somebody else put there.
 */
final class FileList {
  static final String NAME = "sawstead-files.txt";
  private static final String FORMAT = "sawstead-files/1";
  private static final String NOTE =
      "# These files were written together. The next build replaces them together.";

  private FileList() {}

  /** Marks a folder; paths are relative, with forward slashes. */
  static void write(Path folder, Collection<String> paths) throws IOException {
    List<String> lines =
        Stream.concat(Stream.of(FORMAT, NOTE), new TreeSet<>(paths).stream()).toList();
    Files.write(folder.resolve(NAME), lines, StandardCharsets.UTF_8);
  }

  /** The paths named by a folder's list; empty when the folder does not bear our mark. */
  static Optional<Set<String>> read(Path folder) throws IOException {
    Path file = folder.resolve(NAME);
    if (!Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)) {
      return Optional.empty();
    }
    try {
      List<String> lines = Files.readAllLines(file, StandardCharsets.UTF_8);
      if (lines.isEmpty() || !lines.get(0).equals(FORMAT)) {
        return Optional.empty();
      }
      return Optional.of(new HashSet<>(lines.subList(1, lines.size())));
    } catch (MalformedInputException | NoSuchFileException e) {
      return Optional.empty();
    }
  }

  /** Whether a folder is empty or bears our mark: then it may be removed as a leftover of ours. */
  static boolean isOursOrEmpty(Path folder) throws IOException {
    if (read(folder).isPresent()) {
      return true;
    }
    try (Stream<Path> entries = Files.list(folder)) {
      return entries.findAny().isEmpty();
    }
  }

  /** The first file, in reading order, that stands in a folder and is not on its list. */
  static Optional<String> stranger(Path folder, Set<String> listed) throws IOException {
    TreeSet<String> strangers = new TreeSet<>();
    Files.walkFileTree(
        folder,
        new SimpleFileVisitor<>() {
          @Override
          public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) {
            String path = folder.relativize(file).toString().replace('\\', '/');
            if (!path.equals(NAME) && !listed.contains(path)) {
              strangers.add(path);
            }
            return FileVisitResult.CONTINUE;
          }
        });
    return strangers.isEmpty() ? Optional.empty() : Optional.of(strangers.first());
  }
}
