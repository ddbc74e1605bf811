package sawstead.layout.shop;

import java.util.List;
import sawstead.brief.GoodSide;

/**
 * Panels that are alike.
 *
 * @param unit of the station, {@code stand}
 * @param parts ids
 * @param length finished, along the grain, mm
 * @param width finished, across the grain, mm
 * @param thickness mm
 * @param sheet name of the sheet
 * @param good which face is the good one
 * @param mass of one after all cuts, kg
 * @param joints what is cut into each, in words; empty for a plain board
 * @param bands which edges show and may be banded, in words; where panels of the line differ, by
 *     panel
 */
public record CutListLine(
    String unit,
    List<String> parts,
    double length,
    double width,
    double thickness,
    String sheet,
    GoodSide good,
    double mass,
    String joints,
    String bands) {
  public CutListLine {
    parts = List.copyOf(parts);
  }
}
