package sawstead.export;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.Objects;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;

/**
 * Lets one build at a time write one output folder.
 *
 * <p>The system frees the lock of a process that was killed, so whoever holds it knows that drafts
 * found beside the folder belong to nobody.
 */
final class FolderLock implements AutoCloseable {
  // The system's locks belong to processes, and closing any channel of the file gives them up.
  private static final Set<Path> HELD_HERE = ConcurrentHashMap.newKeySet();

  private final Path file;
  private final FileChannel channel;

  private FolderLock(Path file, FileChannel channel) {
    this.file = file;
    this.channel = channel;
  }

  /**
   * Takes the lock.
   *
   * @param file the lock's own file, absolute; made here and deleted when the lock is given up
   * @param target the folder that a refusal names
   * @throws ExportException when another process or thread holds the lock
   */
  static FolderLock take(Path file, Path target) throws IOException {
    if (!HELD_HERE.add(file)) {
      throw busy(target);
    }
    FolderLock lock = null;
    try {
      // The last holder may delete the file between our steps: then there is a new one to take.
      while (lock == null) {
        lock = tryOnce(file, target);
      }
      return lock;
    } finally {
      if (lock == null) {
        HELD_HERE.remove(file);
      }
    }
  }

  private static FolderLock tryOnce(Path file, Path target) throws IOException {
    // Outside the block below: where no file can be made, trying again would never end.
    create(file);
    FileChannel channel = null;
    boolean held = false;
    try {
      Object before = identity(file);
      channel = FileChannel.open(file, StandardOpenOption.WRITE, LinkOption.NOFOLLOW_LINKS);
      if (channel.tryLock() == null) {
        throw busy(target);
      }
      held = Objects.equals(before, identity(file));
      return held ? new FolderLock(file, channel) : null;
    } catch (NoSuchFileException e) {
      return null;
    } finally {
      if (channel != null && !held) {
        channel.close();
      }
    }
  }

  private static void create(Path file) throws IOException {
    try {
      Files.createFile(file);
    } catch (FileAlreadyExistsException e) {
      // Held by another build, or left by one that was killed; the lock itself tells which.
      return;
    }
  }

  private static Object identity(Path file) throws IOException {
    return Files.readAttributes(file, BasicFileAttributes.class, LinkOption.NOFOLLOW_LINKS)
        .fileKey();
  }

  private static ExportException busy(Path target) {
    return new ExportException(
        "another build is writing this folder",
        target.toString(),
        "wait until it has ended, then build again");
  }

  @Override
  public void close() throws IOException {
    try {
      Files.deleteIfExists(file);
    } finally {
      channel.close();
      HELD_HERE.remove(file);
    }
  }
}
