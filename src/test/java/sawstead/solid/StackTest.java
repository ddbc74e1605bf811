package sawstead.solid;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

class StackTest {
  @Test
  void volumeExact_ofCylinders() {
    Stack vac =
        new Stack(
            List.of(
                new Layer(Outline.circle(0, 0, 400), 300),
                new Layer(Outline.circle(0, 0, 250), 200)));
    double exact = Math.PI * (200 * 200 * 300 + 125 * 125 * 200);
    assertEquals(exact, vac.volumeExact(), exact * 1e-12);
    assertTrue(vac.volume() > exact);
    assertTrue(vac.mesh().isClosedAndOriented());
    assertEquals(500, vac.height());
    assertEquals(500, vac.box().high().z());
    assertEquals(2, vac.cover().size());
  }

  /** A circle's polygon reaches exactly as far along u and v as the circle. */
  @Test
  void box_ofCylinderIsThatOfTheCircle() {
    assertEquals(
        new Box(new Vec(-50, -50, 0), new Vec(50, 50, 30)), Solids.cylinder(100, 30).box());
  }

  @Test
  void volume_ofOverhangingBoxes() {
    Stack steps =
        new Stack(
            List.of(
                new Layer(Outline.rectangle(0, 0, 10, 10), 5),
                new Layer(Outline.rectangle(5, 5, 20, 8), 7),
                new Layer(Outline.rectangle(5, 5, 20, 8), 2)));
    assertEquals(500 + 45 * 9, steps.volume(), 1e-9);
    assertTrue(steps.mesh().isClosedAndOriented());
  }

  /** Two layers that meet along one edge only: that edge carries four faces. */
  @Test
  void mesh_ofLayersMeetingInAnEdgeIsClosed() {
    Stack touching =
        new Stack(
            List.of(
                new Layer(Outline.rectangle(0, 0, 10, 10), 5),
                new Layer(Outline.rectangle(10, 0, 20, 10), 5)));
    assertEquals(1000, touching.volume(), 1e-9);
    assertTrue(touching.mesh().isClosedAndOriented());
  }

  @Test
  void new_refusesNothing() {
    assertThrows(SolidException.class, () -> new Stack(List.of()));
    assertThrows(SolidException.class, () -> new Layer(Outline.circle(0, 0, 1), 0));
    assertThrows(SolidException.class, () -> Solids.box(1, 1, Double.POSITIVE_INFINITY));
  }
}
