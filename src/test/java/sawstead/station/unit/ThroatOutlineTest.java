package sawstead.station.unit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import sawstead.brief.ThroatShape;
import sawstead.solid.Box;
import sawstead.solid.Corner;
import sawstead.solid.Outline;

class ThroatOutlineTest {

  private static ThroatOutline of(ThroatShape shape) {
    return new ThroatOutline(340, 95, 8, 12, shape, 15, 40);
  }

  /** Square and circle: w l - (4 - pi) r^2. */
  @Test
  void area_ofStraight_isTheRectangleLessItsCorners() {
    for (double inset : new double[] {0, 0.2, 8}) {
      double r = 12 - inset;
      assertEquals(
          (340 - 2 * inset) * (95 - 2 * inset) - (4 - Math.PI) * r * r,
          of(ThroatShape.STRAIGHT).alongU(inset).area(),
          1e-6);
    }
  }

  /** Rectangle and circle: (l - w) w + pi w^2 / 4; an inset keeps the difference of l and w. */
  @Test
  void area_ofRoundEnds_isARectangleAndACircle() {
    for (double inset : new double[] {0, 0.2, 8}) {
      double w = 95 - 2 * inset;
      assertEquals(
          (340 - 95) * w + Math.PI * w * w / 4, of(ThroatShape.ROUND).alongU(inset).area(), 1e-6);
    }
  }

  /** w l - 2 a b; an inset takes away perimeter times inset, and adds tan(turn / 2) at corners. */
  @Test
  void area_ofTapered_isTheRectangleLessFourTriangles() {
    Outline full = of(ThroatShape.TAPERED).alongU(0);
    double area = 340 * 95 - 2 * 15 * 40.0;
    double perimeter = 2 * (340 - 80) + 2 * (95 - 30) + 4 * Math.hypot(15, 40);
    assertEquals(area, full.area(), 1e-6);
    assertEquals(perimeter, full.perimeter(), 1e-6);
    // Turns of the outline: atan(a / b) at the long sides, the rest of 90 degrees at the short
    // ones.
    double turn = Math.atan2(15, 40);
    double corners = 4 * (Math.tan(turn / 2) + Math.tan((Math.PI / 2 - turn) / 2));
    for (double inset : new double[] {0.2, 3, 8}) {
      assertEquals(
          area - perimeter * inset + corners * inset * inset,
          of(ThroatShape.TAPERED).alongU(inset).area(),
          1e-6);
    }
  }

  @Test
  void body_hangsThroughTheLedgesOpening() {
    for (ThroatShape shape : ThroatShape.values()) {
      ThroatOutline throat = of(shape);
      Outline opening = throat.alongU(throat.ledgeWidth());
      double u = throat.bodyHalfLength(1) - 0.01;
      double v = throat.bodyHalfWidth(1);
      for (double[] corner : new double[][] {{u, v}, {-u, v}, {-u, -v}, {u, -v}}) {
        assertTrue(opening.contains(corner[0], corner[1]), shape + " " + u + ", " + v);
      }
    }
  }

  @Test
  void acrossU_isTheSameTurned() {
    for (ThroatShape shape : ThroatShape.values()) {
      Box along = of(shape).alongU(0).bounds();
      Box across = of(shape).acrossU(0).bounds();
      assertEquals(along.size().x(), across.size().y(), 1e-9);
      assertEquals(along.size().y(), across.size().x(), 1e-9);
      assertEquals(of(shape).alongU(0).area(), of(shape).acrossU(0).area(), 1e-6);
    }
  }

  @Test
  void corners_ofRoundEnds_areHalfCircles() {
    assertEquals(
        2,
        of(ThroatShape.ROUND).alongU(0).corners().stream().mapToDouble(Corner::bulge).sum(),
        1e-9);
  }
}
