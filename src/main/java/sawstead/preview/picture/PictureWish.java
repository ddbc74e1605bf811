package sawstead.preview.picture;

import java.util.Objects;
import sawstead.preview.scene.Arrangement;
import sawstead.preview.scene.Stance;

/**
 * What a picture should show.
 *
 * @param stance from where
 * @param width pixels
 * @param height pixels
 * @param dark dark look
 * @param seeThrough whether saw, vac and other envelopes are seen through
 * @param arrangement what is open or spread
 */
public record PictureWish(
    Stance stance,
    int width,
    int height,
    boolean dark,
    boolean seeThrough,
    Arrangement arrangement) {
  /** Least and greatest width and height, pixels. */
  public static final int LEAST = 64;

  /** Greatest width and height: what common graphics drivers still draw in one go. */
  public static final int MOST = 4096;

  /** Refuses sizes that no driver draws. */
  public PictureWish {
    Objects.requireNonNull(stance, "stance");
    Objects.requireNonNull(arrangement, "arrangement");
    if (width < LEAST || width > MOST || height < LEAST || height > MOST) {
      throw new IllegalArgumentException(
          "a picture is " + LEAST + " to " + MOST + " pixels wide and high");
    }
  }
}
