package sawstead.export;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * A folder that a build writes whole or not at all.
 *
 * <ol>
 *   <li>Refuse a target that is a file or a link, or a folder that holds anything we did not write.
 *   <li>Take the lock beside it; clear away what a killed build left, and put back the old folder
 *       if that build died between the two renames.
 *   <li>Write every file into a draft beside the target; on any failure remove the draft.
 *   <li>Rename the old folder aside, the draft into place, and delete the old one. Should the
 *       second rename fail, the first is undone.
 * </ol>
 *
 * <p>Guaranteed when the process fails or is killed at any point: the target is as it was, or
 * complete, or (between the two renames) absent with the old one beside it, which the next build
 * puts back. Not guaranteed after a power cut: the system may not have written yet.
 */
public final class OutputFolder {
  private final Path target;
  private final Path draft;
  private final Path old;
  private final Path lock;

  private OutputFolder(Path target) {
    this.target = target.toAbsolutePath().normalize();
    Path name = this.target.getFileName();
    if (name == null) {
      throw new ExportException(
          "the root of a file system cannot be an output folder",
          target.toString(),
          "choose a folder inside it");
    }
    this.draft = this.target.resolveSibling("." + name + ".sawstead-draft");
    this.old = this.target.resolveSibling("." + name + ".sawstead-old");
    this.lock = this.target.resolveSibling("." + name + ".sawstead-lock");
  }

  /** The folder at a path, which need not exist; nothing is touched before {@link #write}. */
  public static OutputFolder at(Path target) {
    return new OutputFolder(target);
  }

  /** Fills a draft with files. */
  @FunctionalInterface
  public interface Contents {
    /** Writes all files; an exception of any kind leaves the target as it was. */
    void writeTo(Draft draft) throws IOException;
  }

  /**
   * Writes the folder.
   *
   * @throws ExportException when the target is refused, or when the system could not write; what
   *     stood there is then unchanged
   */
  @SuppressWarnings("try") // The lock is held, not used.
  public void write(Contents contents) {
    try {
      refuseAFileOnTheWay();
      Files.createDirectories(target.getParent());
      // Before the lock as well, so that a refusal leaves no trace.
      refuseWhatIsNotOurs();
      try (FolderLock held = FolderLock.take(lock, target)) {
        clearLeftovers();
        refuseWhatIsNotOurs();
        writeDraft(contents);
        swap();
      }
    } catch (IOException e) {
      throw ExportException.from(e, target);
    }
  }

  private void refuseAFileOnTheWay() {
    Path above = target.getParent();
    while (above != null && !Files.exists(above)) {
      above = above.getParent();
    }
    if (above != null && !Files.isDirectory(above)) {
      throw new ExportException(
          "a file stands where a folder should be", above.toString(), "choose another folder");
    }
  }

  private void refuseWhatIsNotOurs() throws IOException {
    if (Files.isSymbolicLink(target)) {
      throw refusal("the output folder is a link");
    }
    if (!FolderTree.exists(target)) {
      return;
    }
    if (!Files.isDirectory(target, LinkOption.NOFOLLOW_LINKS)) {
      throw refusal("a file stands where the output folder should be");
    }
    Optional<Set<String>> listed = FileList.read(target);
    if (listed.isEmpty() && !FileList.isOursOrEmpty(target)) {
      throw refusal("the folder exists and was not written by Sawstead");
    }
    Optional<String> stranger = FileList.stranger(target, listed.orElse(Set.of()));
    if (stranger.isPresent()) {
      throw new ExportException(
          "the folder holds a file that Sawstead did not write: " + stranger.get(),
          target.toString(),
          "move that file elsewhere, or choose another folder");
    }
  }

  private ExportException refusal(String what) {
    return new ExportException(
        what, target.toString(), "choose another folder, or move what stands there");
  }

  private void clearLeftovers() throws IOException {
    if (!FolderTree.exists(target) && isLeftover(old)) {
      Files.move(old, target);
    }
    for (Path leftover : List.of(draft, old)) {
      if (isLeftover(leftover)) {
        FolderTree.delete(leftover, FileList.NAME);
      } else if (FolderTree.exists(leftover)) {
        throw new ExportException(
            "something that Sawstead did not write has a name it needs",
            leftover.toString(),
            "move it elsewhere");
      }
    }
  }

  private static boolean isLeftover(Path folder) throws IOException {
    return Files.isDirectory(folder, LinkOption.NOFOLLOW_LINKS) && FileList.isOursOrEmpty(folder);
  }

  private void writeDraft(Contents contents) throws IOException {
    Files.createDirectory(draft);
    boolean whole = false;
    try {
      // The mark comes first: a draft left by a killed process can then be told from a stranger's.
      FileList.write(draft, Set.of());
      Draft open = new Draft(draft);
      contents.writeTo(open);
      FileList.write(draft, open.names());
      whole = true;
    } finally {
      if (!whole) {
        discard(draft);
      }
    }
  }

  /** Removes what is no longer wanted; should that fail, the next build clears it away. */
  private static void discard(Path folder) {
    try {
      FolderTree.delete(folder, FileList.NAME);
    } catch (IOException e) {
      // The build has ended well, or its own failure says more to the user than this one.
      return;
    }
  }

  private void swap() throws IOException {
    boolean replaces = FolderTree.exists(target);
    try {
      if (replaces) {
        Files.move(target, old);
      }
      try {
        Files.move(draft, target);
      } catch (IOException e) {
        if (replaces) {
          Files.move(old, target);
        }
        throw e;
      }
    } catch (IOException e) {
      discard(draft);
      throw e;
    }
    if (replaces) {
      discard(old);
    }
  }
}
