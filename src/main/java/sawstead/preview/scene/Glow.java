package sawstead.preview.scene;

import javafx.scene.paint.Color;
import sawstead.preview.look.Tokens;

/** How a body is lit up. */
public enum Glow {
  /** Not at all. */
  NONE("ink", 0),
  /** Chosen, or just arriving. */
  CHOSEN("cobalt", 0.55),
  /** Meant by a finding that forbids cutting. */
  STOP("vermilion", 0.72),
  /** Meant by a finding to look at. */
  MIND("tape", 0.62),
  /** Good to know. */
  NOTE("lichen", 0.55);

  private final String token;
  private final double part;

  Glow(String token, double part) {
    this.token = token;
    this.part = part;
  }

  Color over(Color colour, Tokens look) {
    return colour.interpolate(look.colour(token), part);
  }
}
