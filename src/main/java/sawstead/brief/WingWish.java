package sawstead.brief;

import static java.util.Objects.requireNonNull;

import java.util.List;
import java.util.Optional;
import sawstead.measure.Measured;

/**
 * A cubby box beside the saw.
 *
 * @param width along x, mm
 * @param depth along y, mm
 * @param front its front side from the table's front edge, mm
 * @param height from its underside to its top, mm
 * @param opening where one reaches in
 * @param purpose in the user's words
 * @param contents what is kept in it
 * @param drop of its top below the table's top, mm
 * @param sheet sheet, if not the station's
 * @param joint how its parts are joined
 */
public record WingWish(
    Optional<Measured> width,
    Optional<Measured> depth,
    Optional<Measured> front,
    Optional<Measured> height,
    Side opening,
    String purpose,
    List<Content> contents,
    Optional<Measured> drop,
    Optional<String> sheet,
    JointKind joint) {
  public WingWish {
    requireNonNull(width, "width");
    requireNonNull(depth, "depth");
    requireNonNull(front, "front");
    requireNonNull(height, "height");
    requireNonNull(opening, "opening");
    requireNonNull(purpose, "purpose");
    contents = List.copyOf(contents);
    requireNonNull(drop, "drop");
    requireNonNull(sheet, "sheet");
    requireNonNull(joint, "joint");
  }
}
