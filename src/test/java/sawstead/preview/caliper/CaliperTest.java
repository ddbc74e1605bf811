package sawstead.preview.caliper;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import org.junit.jupiter.api.Test;
import sawstead.check.Words;
import sawstead.measure.Unit;
import sawstead.solid.Axis;
import sawstead.solid.Body;
import sawstead.solid.Placement;
import sawstead.solid.Solids;
import sawstead.solid.Vec;

class CaliperTest {
  private final Body low = new Body("low", Solids.box(200, 100, 18), Placement.identity());
  private final Body high =
      new Body("high", Solids.box(200, 100, 18), Placement.identity().moved(0, 0, 100));

  private static Spot at(Body body, double x, double y, double z) {
    return Spot.at(body, new Vec(x, y, z), 4);
  }

  @Test
  void point_nearAnEdge_meansTheEdge() {
    assertInstanceOf(Spot.FaceSpot.class, at(low, 100, 50, 18));
    Spot.EdgeSpot edge = assertInstanceOf(Spot.EdgeSpot.class, at(low, 100, 2, 18));
    assertEquals(1, Math.abs(edge.along().x()), 1e-12);
    // A pixel's rounding off the face does no harm: the spot lies on the face itself.
    assertEquals(18, at(low, 100, 50, 18.003).at().z(), 1e-12);
  }

  @Test
  void faces_areAsFarAsTheirPlanes() {
    Caliper.Reading reading = Caliper.between(at(low, 10, 50, 18), at(high, 150, 30, 100));
    assertEquals(82, reading.millimetres().orElseThrow(), 1e-9);
    assertEquals("82 mm face to face", reading.words(new Words(Unit.MM)));
    assertEquals(0, reading.from().x() - reading.to().x(), 1e-9);
  }

  @Test
  void faceAndEdge_edges_asOneMeasuresThem() {
    Spot top = at(low, 100, 50, 18);
    Spot rim = at(high, 100, 0, 118);
    assertEquals(100, Caliper.between(top, rim).millimetres().orElseThrow(), 1e-9);
    Spot front = at(low, 100, 0, 0);
    // From (y 0, z 0) to (y 0, z 118).
    assertEquals(118, Caliper.between(front, rim).millimetres().orElseThrow(), 1e-9);
    assertEquals(
        "~4-21/32 in edge to edge", Caliper.between(front, rim).words(new Words(Unit.INCH)));
  }

  @Test
  void turned_saysTheAngle() {
    Body leaning =
        new Body(
            "leaning",
            Solids.box(200, 100, 18),
            Placement.identity().turned(Axis.X, 30).moved(0, 0, 200));
    Spot under = Spot.at(leaning, leaning.placement().apply(new Vec(100, 50, 0)), 4);
    Caliper.Reading reading = Caliper.between(at(low, 100, 50, 18), under);
    assertEquals(30, reading.degrees(), 1e-9);
    // The lowest edge of the leaning board stands at 200, the top at 18.
    assertEquals(182, reading.millimetres().orElseThrow(), 1e-6);
  }
}
