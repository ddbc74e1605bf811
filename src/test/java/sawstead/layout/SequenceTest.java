package sawstead.layout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

class SequenceTest {
  private static final Region ANY = new Region(0, 0, 1000, 1000);
  private static final SawNode END = new SawNode.Left(ANY);

  private static SawNode cut(Guide guide, int setting, SawNode near, SawNode far) {
    Guidance how = new Guidance(guide, setting, true);
    return new SawNode.Sawn(ANY, Direction.LENGTH, 0, how, near, far);
  }

  private static SawNode fence(int setting, SawNode far) {
    return cut(Guide.FENCE, setting, END, far);
  }

  private static List<Integer> orders(Sequence sequence, int sheet) {
    return sequence.cuts().get(sheet).stream().map(Cut::order).toList();
  }

  @Test
  void equalWidthsOfTwoSheets_areCutAtOneSetting() {
    Sequence sequence = Sequence.of(List.of(fence(100, fence(50, END)), fence(100, END)));
    assertEquals(2, sequence.settings());
    assertEquals(List.of(1, 3), orders(sequence, 0));
    assertEquals(List.of(2), orders(sequence, 1));
  }

  @Test
  void settingThatMustWait_isTakenUpWhenAllAreReady() {
    // 100 is wanted at once by one sheet and after 50 by the other: 50 first saves a setting.
    Sequence sequence = Sequence.of(List.of(fence(100, END), fence(50, fence(100, END))));
    assertEquals(2, sequence.settings());
    assertTrue(orders(sequence, 0).get(0) > 1);
  }

  @Test
  void settingsThatBlockEachOther_costOneMore() {
    Sequence sequence =
        Sequence.of(List.of(fence(100, fence(50, END)), fence(50, fence(100, END))));
    assertEquals(3, sequence.settings());
  }

  @Test
  void greedyThatWouldErr_isMendedByTrials() {
    // Each line is a sheet; three settings suffice: 30, 20, 10.
    Sequence sequence =
        Sequence.of(
            List.of(
                fence(30, fence(20, fence(10, END))),
                fence(20, fence(10, END)),
                fence(30, fence(10, END)),
                fence(10, END)));
    assertEquals(3, sequence.settings());
  }

  @Test
  void railCuts_comeBeforeTheTable() {
    Sequence sequence =
        Sequence.of(List.of(fence(100, END), cut(Guide.RAIL, -1, fence(100, END), END)));
    assertEquals(List.of(2), orders(sequence, 0));
    assertEquals(List.of(1, 3), orders(sequence, 1));
    assertEquals(1, sequence.settings());
  }

  @Test
  void fenceAndStop_areSettingsOfTheirOwn() {
    SawNode sled = cut(Guide.SLED, 100, END, END);
    assertEquals(2, Sequence.of(List.of(fence(100, sled))).settings());
  }
}
