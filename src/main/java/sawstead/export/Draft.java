package sawstead.export;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.HashSet;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Consumer;

/**
 * The folder while it is being written, beside the place where it will stand.
 *
 * <p>Refused with an {@link ExportException}: two names that would be one file where case is not
 * seen, and a name that needs a folder where a file stands.
 */
public final class Draft {
  private final Path folder;
  private final Set<String> names = new TreeSet<>();
  private final Set<String> fileKeys = new HashSet<>();
  private final Set<String> folderKeys = new HashSet<>();

  private Consumer<String> watch = name -> {};

  Draft(Path folder) {
    this.folder = folder;
  }

  /** Tells the relative path of each file from now on, when it is opened. */
  public void watch(Consumer<String> opened) {
    watch = opened;
  }

  /** Opens a new file; the caller closes it. Folders on the way are made. */
  public OutputStream open(FileName name) throws IOException {
    reserve(name);
    watch.accept(name.toString());
    Path path = name.below(folder);
    Files.createDirectories(path.getParent());
    return new BufferedOutputStream(
        Files.newOutputStream(path, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE));
  }

  /** Relative paths of all files opened so far, in order. */
  Set<String> names() {
    return Set.copyOf(names);
  }

  private void reserve(FileName name) {
    boolean taken = folderKeys.contains(name.key()) || !fileKeys.add(name.key());
    for (int steps = 1; steps < name.steps().size(); steps++) {
      String above = new FileName(name.steps().subList(0, steps)).key();
      folderKeys.add(above);
      taken |= fileKeys.contains(above);
    }
    if (taken || name.key().equals(FileList.NAME)) {
      throw new ExportException(
          "two files would have one name on a system that does not tell capitals from small"
              + " letters",
          name.toString(),
          "give the parts ids that differ in more than capitals");
    }
    names.add(name.toString());
  }
}
