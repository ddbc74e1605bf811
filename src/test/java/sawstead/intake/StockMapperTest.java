package sawstead.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import sawstead.brief.GoodSide;
import sawstead.brief.Sheet;
import sawstead.brief.SheetOffcut;
import sawstead.measure.Measured;
import sawstead.measure.Measured.Origin;

class StockMapperTest {

  private static Sheet sheet(String was, String is) {
    return Briefs.least(was, is).stock().get(0);
  }

  @Test
  void thickness_measured_hasTheBandOfACaliper() {
    assertEquals(
        new Measured("stock[0].thickness", 17.7, 0.1, 0.1, Origin.MEASURED),
        sheet("17.7", "17.7").thickness());
  }

  @Test
  void thickness_unknown_isTheNominalWithTheBandOfItsStandard() {
    // REF-PLY-06: 18 mm sanded is 17.06 to 18.74 mm
    Measured thickness = sheet("thickness: 17.7", "nominal: 18 mm, thickness: unknown").thickness();
    assertEquals(Origin.UNKNOWN, thickness.origin());
    assertEquals(17.06, thickness.low(), 1e-9);
    assertEquals(18.74, thickness.high(), 1e-9);
  }

  @Test
  void thickness_leftOut_isTheNominalToo() {
    // REF-PLY-04: 23/32 is 0.688 to 0.750 in
    Measured thickness = sheet("thickness: 17.7", "nominal: 23/32").thickness();
    assertEquals(Origin.DEFAULT, thickness.origin());
    assertEquals(17.46, thickness.low(), 0.005);
    assertEquals(19.05, thickness.high(), 0.005);
  }

  @Test
  void nominal_leftOut_isTheThicknessAsText() {
    assertEquals("17.7 mm", sheet("17.7", "17.7").nominal());
    assertEquals("18", sheet("thickness: 17.7", "nominal: 18").nominal());
  }

  @Test
  void sheet_hasDefaults() {
    Sheet sheet = sheet("17.7", "17.7");
    assertEquals(600, sheet.density().nominal());
    assertEquals(5, sheet.trim().nominal());
    assertTrue(sheet.grainAlongLength());
    assertEquals(GoodSide.FRONT, sheet.good());
    assertTrue(sheet.price().isEmpty());
    Sheet told = sheet("17.7", "17.7, grain: width, price: 62.5");
    assertFalse(told.grainAlongLength());
    assertEquals(62.5, told.price().orElseThrow());
    assertEquals(GoodSide.BACK, sheet("17.7", "17.7, good: back").good());
    assertEquals(GoodSide.BOTH, sheet("17.7", "17.7, good: both").good());
  }

  @Test
  void offcuts_andQuantity_areRead() {
    Sheet sheet =
        sheet("17.7", "17.7, quantity: 3, offcuts: [{name: rack-3, length: 800, width: 600}]");
    assertEquals(Optional.of(3), sheet.quantity());
    assertEquals(List.of(new SheetOffcut("rack-3", 800, 600, 0, List.of())), sheet.offcuts());
    assertEquals(Optional.empty(), sheet("17.7", "17.7").quantity());
  }

  @Test
  void offcut_listedTwice_isRefusedWithItsName() {
    String twice =
        "17.7, offcuts: [{name: rack-3, length: 800, width: 600},"
            + " {name: rack-3, length: 700, width: 500}]";
    List<BriefProblem> problems = Briefs.problems(Briefs.LEAST.replace("17.7", twice));
    assertEquals(
        List.of("stock[0].offcuts[1].name"), problems.stream().map(BriefProblem::path).toList());
    assertTrue(problems.get(0).what().contains("rack-3"), problems.get(0).what());
  }
}
