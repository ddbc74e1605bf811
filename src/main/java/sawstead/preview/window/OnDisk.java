package sawstead.preview.window;

import java.io.IOException;
import java.nio.charset.CharacterCodingException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import javafx.application.Platform;
import sawstead.preview.text.BriefFile;
import sawstead.preview.text.FileWatch;
import sawstead.preview.text.TextPane;

/** The file behind the text: reads it, writes it, and hears when somebody else does. */
final class OnDisk implements AutoCloseable {
  private final Path file;
  private final TextPane text;
  private final NewsLine news;
  private final Consumer<String> arrived;
  private final BiConsumer<String, String> unreadable;
  private final FileWatch watch;
  private BriefFile saved;
  private boolean closed;

  /** Whether the file was ever read: else its text is not known, and may not be written over. */
  private boolean known;

  /**
   * Nothing is read yet.
   *
   * @param arrived is told each text that was read
   * @param unreadable is told what is wrong with the file, and what to do
   */
  OnDisk(
      Path file,
      TextPane text,
      NewsLine news,
      Consumer<String> arrived,
      BiConsumer<String, String> unreadable) {
    this.file = file;
    this.text = text;
    this.news = news;
    this.arrived = arrived;
    this.unreadable = unreadable;
    saved = BriefFile.empty(file);
    watch = new FileWatch(file, () -> Platform.runLater(this::changed));
  }

  /** Reads the file again, and says so; what was typed comes back by undo. */
  void readAgain() {
    boolean typed = isTyped();
    if (read()) {
      news.note(typed ? "read again; Ctrl+Z brings back what was typed" : "read again");
    }
  }

  /**
   * Reads the file.
   *
   * @return whether it could be read
   */
  boolean read() {
    boolean typed = known && isTyped();
    try {
      saved = BriefFile.read(file);
      known = true;
      if (typed) {
        text.replaceAll(saved.text());
      } else {
        text.open(saved.text());
      }
      arrived.accept(saved.text());
      return true;
    } catch (CharacterCodingException e) {
      unreadable.accept("the file is not UTF-8 text", "save it as UTF-8 (plain text)");
    } catch (IOException e) {
      if (Files.isDirectory(file)) {
        unreadable.accept("this is a folder, not a brief", "move it away, then Ctrl+R");
      } else {
        unreadable.accept(
            Files.exists(file) ? "the file cannot be read" : "there is no such file any more",
            known
                ? "what was typed is still here; save it with Ctrl+S to have the file again"
                : "see whether it is a brief of at most 4 MiB that you may read, then Ctrl+R");
      }
    }
    return false;
  }

  private void changed() {
    if (closed) {
      return; // The watch had seen it just before.
    }
    if (!Files.exists(file)) {
      unreadable.accept("the file is gone", "what you see is still here; Ctrl+S writes it again");
    } else if (isTyped()) {
      news.mind("the file was changed by somebody else; Ctrl+R takes theirs, Ctrl+S keeps yours");
    } else if (read()) {
      news.note("read again: the file was changed");
    }
  }

  /** Writes what was typed, and says so. */
  void save() {
    if (!known && Files.exists(file)) {
      news.mind(
          "not saved: "
              + file
              + " could not be read, and what is in it would be lost; make it readable, then Ctrl+R");
      return;
    }
    try {
      BriefFile now = saved.with(text.textProperty().get());
      now.write();
      saved = now;
      known = true;
      watch.accept();
      news.note("saved: " + file);
    } catch (IOException e) {
      news.mind(
          "not saved: "
              + file
              + (Files.isDirectory(file)
                  ? " is a folder now; move it away, then Ctrl+S again"
                  : " cannot be written; see that its folder is there and that you may write to"
                      + " both, then Ctrl+S again")
              + "; nothing that was typed is lost");
    }
  }

  /** Whether the text is another than that of the file. */
  boolean isTyped() {
    return !text.textProperty().get().equals(saved.text());
  }

  @Override
  public void close() {
    closed = true;
    watch.close();
  }
}
