package sawstead.preview.scene;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;
import javafx.scene.shape.MeshView;
import javafx.scene.shape.TriangleMesh;
import org.junit.jupiter.api.Test;
import sawstead.solid.Axis;
import sawstead.solid.Face;
import sawstead.solid.Outline;
import sawstead.solid.Panel;
import sawstead.solid.Placement;
import sawstead.solid.Recess;

/** The face that a section leaves, against areas worked out by hand. */
class CutTest {
  @Test
  void area_ofAPlainBoard_isWidthTimesThickness() {
    Panel board = new Panel(Outline.rectangle(0, 0, 400, 300), 18);
    Section across = new Section(Optional.of(Axis.X), 150);
    assertEquals(300 * 18, area(board, across.in(Placement.identity())), 1e-2);
  }

  @Test
  void area_ofAGroovedBoard_leavesTheGrooveOut() {
    Panel board =
        new Panel(Outline.rectangle(0, 0, 400, 300), 18)
            .with(new Recess("groove", Outline.rectangle(0, 100, 400, 120), 9, Face.FRONT));
    Section across = new Section(Optional.of(Axis.X), 150);
    assertEquals(300 * 18 - 20 * 9, area(board, across.in(Placement.identity())), 1e-2);
  }

  @Test
  void area_beyondTheBoard_isNothing() {
    Panel board = new Panel(Outline.rectangle(0, 0, 400, 300), 18);
    Section beside = new Section(Optional.of(Axis.X), 500);
    assertEquals(0, area(board, beside.in(Placement.identity())), 0);
  }

  private static double area(Panel panel, Section.Half half) {
    MeshView view = Cut.of(panel, half, panel.thickness()).view();
    TriangleMesh mesh = (TriangleMesh) view.getMesh();
    float[] p = mesh.getPoints().toArray(null);
    double sum = 0;
    for (int t = 0; t + 8 < p.length; t += 9) {
      double[] a = {p[t + 3] - p[t], p[t + 4] - p[t + 1], p[t + 5] - p[t + 2]};
      double[] b = {p[t + 6] - p[t], p[t + 7] - p[t + 1], p[t + 8] - p[t + 2]};
      double x = a[1] * b[2] - a[2] * b[1];
      double y = a[2] * b[0] - a[0] * b[2];
      double z = a[0] * b[1] - a[1] * b[0];
      sum += Math.sqrt(x * x + y * y + z * z) / 2;
    }
    return sum;
  }
}
