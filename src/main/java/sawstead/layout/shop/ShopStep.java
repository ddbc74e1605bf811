package sawstead.layout.shop;

import java.util.List;
import sawstead.layout.Cut;
import sawstead.layout.CutPlan;
import sawstead.layout.CutRequest;
import sawstead.layout.Direction;
import sawstead.layout.Guide;
import sawstead.layout.Tool;

/**
 * One cut as it is told to the person who makes it.
 *
 * @param sheet number of the sheet, from 1
 * @param cut the cut
 * @param kerf what the blade takes, mm
 * @param work what is cut; a whole sheet is called by its number
 * @param near what lies before the kerf, nearer the sheet's origin
 * @param far what lies beyond the kerf
 * @param rough whether no panel gets its size from it: a millimetre more or less is no matter
 */
public record ShopStep(
    int sheet, Cut cut, double kerf, CutPiece work, CutPiece near, CutPiece far, boolean rough) {
  private static final double SAME = 0.11;

  /** All cuts of a plan by order, with every piece named as it comes off. */
  public static List<ShopStep> of(CutRequest request, CutPlan plan) {
    return ShopWork.steps(request, plan);
  }

  /** Whether it is measured and marked, since no fence and no stop leads it. */
  public boolean isMarked() {
    return cut.guide().tool() != Tool.TABLE;
  }

  /** Whether the seller makes it. */
  public boolean isSellers() {
    return cut.guide() == Guide.SELLER;
  }

  /**
   * At the table saw: what lies between fence or stop and blade, which is as wide as the setting.
   */
  public CutPiece measured() {
    return Math.abs(across(near) - cut.setting().orElse(across(near))) <= SAME ? near : far;
  }

  /** The other side of the blade. */
  public CutPiece other() {
    return measured() == near ? far : near;
  }

  /** Along the rail: from the near edge of the work to the near side of the kerf, mm. */
  public double mark() {
    return Math.max(0, across(near));
  }

  private double across(CutPiece piece) {
    return cut.along() == Direction.LENGTH ? piece.width() : piece.length();
  }
}
