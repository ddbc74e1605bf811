package sawstead.solid;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class BodyTest {
  @Test
  void box_followsThePlacement() {
    Placement upright = Placement.identity().turned(Axis.X, 90).moved(0, 18, 0);
    Body side = new Body("stand/side", new Panel(Outline.rectangle(0, 0, 600, 300), 18), upright);
    assertEquals(new Box(Vec.ZERO, new Vec(600, 18, 300)), side.box());
    assertEquals(new Vec(300, 9, 150), side.centroid());
  }

  @Test
  void volume_isKeptUnderRigidMotion() {
    RandomSolids random = new RandomSolids(80);
    for (int i = 0; i < 60; i++) {
      Body body = new Body("a", random.soundPanel(), random.placement(1000));
      double pieces = 0;
      for (Piece piece : body.partition()) {
        pieces += piece.volume();
      }
      assertEquals(body.volume(), pieces, 1e-9 * body.volume(), "seed 80, case " + i);
    }
  }

  @Test
  void contains_pointsOfTheSolid() {
    Body cube = new Body("a", Solids.box(10, 10, 10), Placement.identity().turned(Axis.Z, 45));
    assertTrue(cube.contains(new Vec(0, 14.1, 5)));
    assertTrue(cube.contains(Vec.ZERO));
    assertFalse(cube.contains(new Vec(0, 14.2, 5)));
    assertFalse(cube.contains(new Vec(1, 0, 5)));
  }

  @Test
  void moved_isAfterWhatWasThere() {
    Body body = new Body("a", Solids.box(1, 2, 3), Placement.identity().turned(Axis.Z, 90));
    assertEquals(
        new Box(new Vec(8, 0, 0), new Vec(10, 1, 3)),
        body.moved(Placement.at(new Vec(10, 0, 0))).box());
  }

  @Test
  void equals_isByValue() {
    Body a = new Body("a", Solids.box(1, 2, 3), Placement.identity());
    assertEquals(a, new Body("a", Solids.box(1, 2, 3), Placement.identity()));
    assertFalse(a.equals(new Body("b", Solids.box(1, 2, 3), Placement.identity())));
    assertFalse(a.equals(a.moved(Placement.at(Axis.X.unit()))));
  }
}
