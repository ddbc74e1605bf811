package sawstead.squaring;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class AdjustmentTest {

  @Test
  void adjustment_ofTheOtherPivot_goesTheOtherWay() {
    Squareness found = new Squareness(2e-4, 1e-5);
    assertFalse(Adjustment.of(found, Hand.LEFT, 500).awayFromOperator());
    assertTrue(Adjustment.of(found, Hand.RIGHT, 500).awayFromOperator());
    assertEquals(0.1, Adjustment.of(found, Hand.RIGHT, 500).move(), 1e-9);
  }

  /** By hand: 0.09 mm wanted at 600, 0.08 done: 0.01 / 600 of a board of 300 is 0.005. */
  @Test
  void leftOver_isTheMissingPartOverTheBoard() {
    Adjustment move = Adjustment.of(new Squareness(1.5e-4, 1e-5), Hand.LEFT, 600);
    assertEquals(0.005, move.leftOver(0.08, 300), 1e-6);
    assertEquals(300 * 2e-5, move.unsureOver(300), 1e-12);
    assertThrows(
        IllegalArgumentException.class, () -> Adjustment.of(new Squareness(0, 0), Hand.LEFT, 0));
  }
}
