package sawstead.station;

import java.util.Optional;
import sawstead.brief.Brief;
import sawstead.brief.Mount;
import sawstead.brief.Saw;
import sawstead.brief.Sheet;
import sawstead.brief.Side;
import sawstead.brief.StationWish;

/**
 * The solved sizes of a station: what every unit builds from. Lengths mm, station frame.
 *
 * @param brief what was measured and wished
 * @param saw the saw
 * @param wish what is to be built
 * @param levels heights
 * @param table the saw's table, seen from above
 * @param feet outline of the saw's feet
 * @param body the saw's body under the table
 * @param stand base and top of the stand
 * @param outfeed the box behind the saw
 * @param left the left wing
 * @param right the right wing
 */
public record Site(
    Brief brief,
    Saw saw,
    StationWish wish,
    Levels levels,
    Area table,
    Area feet,
    Area body,
    Area stand,
    Optional<BoxPlan> outfeed,
    Optional<WingPlan> left,
    Optional<WingPlan> right) {

  /**
   * The outfeed's sizes.
   *
   * @param mount on the stand's top or hung behind it
   * @param walls outside of the four walls; its front is where lids and side walls begin
   * @param frontWall front face of the front wall, at or behind {@code walls.front()}
   * @param foot underside of the walls
   * @param rim top of the walls
   * @param surface top of the lids
   * @param leafDepth depth of the folding leaf, 0 for none
   * @param hinge the side on which a single lid hangs
   * @param wall sheet of the walls
   * @param lid sheet of lids and leaf
   */
  public record BoxPlan(
      Mount mount,
      Area walls,
      double frontWall,
      double foot,
      double rim,
      double surface,
      double leafDepth,
      Side hinge,
      Sheet wall,
      Sheet lid) {}

  /**
   * A wing's sizes.
   *
   * @param side LEFT or RIGHT
   * @param area its outside, seen from above
   * @param bottom underside
   * @param surface top of its top
   * @param lowered whether it lies below the rails rather than flush
   * @param sheet its sheet
   */
  public record WingPlan(
      Side side, Area area, double bottom, double surface, boolean lowered, Sheet sheet) {}

  /** The sheet that the stand is cut from. */
  public Sheet sheet() {
    return brief.sheet(wish.sheet());
  }

  /** Thickness of the stand's panels, mm. */
  public double thickness() {
    return sheet().thickness().nominal();
  }

  /** The wing on that side. */
  public Optional<WingPlan> wing(Side side) {
    return side == Side.LEFT ? left : right;
  }
}
