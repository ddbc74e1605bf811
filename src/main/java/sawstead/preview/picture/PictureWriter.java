package sawstead.preview.picture;

import java.nio.file.Path;
import javafx.geometry.Pos;
import javafx.scene.Scene;
import javafx.scene.control.Label;
import javafx.scene.image.WritableImage;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import sawstead.check.Report;
import sawstead.check.Words;
import sawstead.preview.PreviewException;
import sawstead.preview.Toolkit;
import sawstead.preview.look.Tokens;
import sawstead.preview.scene.Eye;
import sawstead.preview.scene.Floor;
import sawstead.preview.scene.Photo;
import sawstead.station.Figure;

/** Draws a station off-screen and writes it as PNG. */
public final class PictureWriter {
  /** Share of the picture that the station fills. */
  private static final double SHARE = 0.80;

  private PictureWriter() {}

  /**
   * Writes a picture; the file is replaced whole or not at all.
   *
   * @throws PreviewException if this machine cannot draw, or the file cannot be written
   */
  public static void write(Report report, PictureWish wish, Path file) {
    Toolkit.start();
    PictureFile.write(draw(report, wish), file);
  }

  /** The picture's pixels; JavaFX must run. */
  public static WritableImage draw(Report report, PictureWish wish) {
    return Toolkit.call(() -> scene(report, wish).snapshot(null));
  }

  private static Scene scene(Report report, PictureWish wish) {
    Tokens look = Tokens.of(wish.dark());
    Floor floor = new Floor(report.station(), look);
    floor.seeThrough(wish.seeThrough());
    floor.arrange(wish.arrangement());
    double aspect = (double) wish.width() / wish.height();
    Eye eye = Eye.onto(floor.boxes(), wish.stance(), aspect, SHARE);
    Photo photo = new Photo(floor, wish.width(), wish.height(), eye);
    StackPane room = new StackPane(photo.glass(), caption(report, wish));
    room.getStyleClass().add("room");
    if (wish.dark()) {
      room.getStyleClass().addAll("root", "dark");
    }
    Scene scene = new Scene(room, wish.width(), wish.height());
    scene.getStylesheets().add(Tokens.address());
    return scene;
  }

  private static VBox caption(Report report, PictureWish wish) {
    Label name = new Label(report.station().brief().name());
    name.getStyleClass().add("caption-name");
    Label says = new Label(height(report) + "seen from " + seenFrom(wish));
    says.getStyleClass().add("caption-says");
    VBox caption = new VBox(2, name, says);
    caption.getStyleClass().add("caption");
    caption.setMaxSize(VBox.USE_PREF_SIZE, VBox.USE_PREF_SIZE);
    StackPane.setAlignment(caption, Pos.BOTTOM_LEFT);
    return caption;
  }

  private static String height(Report report) {
    Figure height = report.station().figures().get("workingHeight");
    Words words = new Words(report.station().brief().units());
    return height == null ? "" : "working height " + words.length(height.nominal()) + "  \u00b7  ";
  }

  private static String seenFrom(PictureWish wish) {
    return switch (wish.stance()) {
      case INFEED, OUTFEED -> "the " + wish.stance().word();
      case LEFT, RIGHT -> "the " + wish.stance().word();
      case ABOVE -> "above";
      case CORNER -> "the right corner of the infeed";
    };
  }
}
