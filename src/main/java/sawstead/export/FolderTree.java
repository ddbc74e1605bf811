package sawstead.export;

import java.io.IOException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;

/** Folders with all that is in them. Links are never followed. */
final class FolderTree {
  private FolderTree() {}

  static boolean exists(Path path) {
    return Files.exists(path, LinkOption.NOFOLLOW_LINKS);
  }

  /**
   * Deletes a folder.
   *
   * @param last a file directly in the folder that is deleted after all others, so that a deletion
   *     cut short leaves it
   */
  static void delete(Path folder, String last) throws IOException {
    Path lastFile = folder.resolve(last);
    Files.walkFileTree(
        folder,
        new SimpleFileVisitor<>() {
          @Override
          public FileVisitResult visitFile(Path file, BasicFileAttributes attributes)
              throws IOException {
            if (!file.equals(lastFile)) {
              Files.delete(file);
            }
            return FileVisitResult.CONTINUE;
          }

          @Override
          public FileVisitResult postVisitDirectory(Path visited, IOException fault)
              throws IOException {
            if (fault != null) {
              throw fault;
            }
            if (visited.equals(folder)) {
              Files.deleteIfExists(lastFile);
            }
            Files.delete(visited);
            return FileVisitResult.CONTINUE;
          }
        });
  }
}
