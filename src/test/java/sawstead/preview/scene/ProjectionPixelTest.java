package sawstead.preview.scene;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import javafx.scene.Scene;
import javafx.scene.image.PixelReader;
import javafx.scene.image.WritableImage;
import javafx.scene.layout.StackPane;
import javafx.scene.paint.Color;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import sawstead.preview.Display;
import sawstead.preview.Toolkit;
import sawstead.preview.look.Tokens;
import sawstead.solid.Mesh;
import sawstead.solid.Placement;
import sawstead.solid.Vec;
import sawstead.station.Mover;
import sawstead.station.Part;
import sawstead.station.Station;

/**
 * What is drawn against where the pinhole formula says it must be: a panel is drawn alone, and the
 * box around its pixels must be the box around its projected corners, to a pixel or two.
 */
class ProjectionPixelTest {
  private static final int WIDTH = 800;
  private static final int HEIGHT = 500;

  /** An arris line is half a millimetre wide, and an edge pixel may be half covered. */
  private static final double PIXELS = 1.6;

  private static Station station;

  @BeforeAll
  static void display() throws Exception {
    Display.demand();
    station = Demo.station("lantern-alley");
  }

  private record Bounds(double left, double top, double right, double bottom) {
    boolean near(Bounds other) {
      return Math.abs(left - other.left) <= PIXELS
          && Math.abs(top - other.top) <= PIXELS
          && Math.abs(right - other.right) <= PIXELS
          && Math.abs(bottom - other.bottom) <= PIXELS;
    }
  }

  @ParameterizedTest
  @EnumSource(Stance.class)
  void everyUnit_isDrawnWhereItIs(Stance stance) {
    Floor floor = Toolkit.call(() -> new Floor(station, Tokens.of(false)));
    Eye eye = Eye.onto(floor.boxes(), stance, (double) WIDTH / HEIGHT, 0.8);
    for (String id :
        List.of("stand/base", "stand/leg-1-face", "outfeed/leaf", "wing-left/top", "saw/fence")) {
      Part part = station.part(id).orElseThrow(() -> new AssertionError("no part " + id));
      Bounds seen = drawn(floor, eye, id);
      Bounds said = projected(part, Placement.identity(), eye);
      assertTrue(seen.near(said), id + " from " + stance + ": drawn " + seen + ", is " + said);
    }
  }

  @Test
  void misplacedPanel_isNoticed() {
    Floor floor = Toolkit.call(() -> new Floor(station, Tokens.of(false)));
    Eye eye = Eye.onto(floor.boxes(), Stance.CORNER, (double) WIDTH / HEIGHT, 0.8);
    Part part = station.part("stand/base").orElseThrow();
    Bounds seen = drawn(floor, eye, "stand/base");
    Bounds moved = projected(part, Placement.at(new Vec(0, 0, 10)), eye);
    assertTrue(!seen.near(moved), "10 mm are seen: " + seen + ", " + moved);
  }

  @Test
  void movedPanel_isDrawnWhereTheMotionTakesIt() {
    Mover mover = station.movers().get(0);
    double parameter = mover.motion().from() + 0.6 * (mover.motion().to() - mover.motion().from());
    String id = mover.moves().get(0);
    Floor floor =
        Toolkit.call(
            () -> {
              Floor made = new Floor(station, Tokens.of(false));
              made.arrange(Arrangement.REST.moving(mover.id(), parameter));
              return made;
            });
    Eye eye = Eye.onto(floor.boxes(), Stance.CORNER, (double) WIDTH / HEIGHT, 0.7);
    Bounds said = projected(station.part(id).orElseThrow(), mover.motion().at(parameter), eye);
    Bounds seen = drawn(floor, eye, id);
    assertTrue(seen.near(said), id + ": drawn " + seen + ", is " + said);
  }

  @Test
  void section_leavesThePartOnThisSide() {
    Part part = station.part("stand/base").orElseThrow();
    double middle = part.body().box().centre().z();
    Floor floor =
        Toolkit.call(
            () -> {
              Floor made = new Floor(station, Tokens.of(false));
              made.cut(new Section(java.util.Optional.of(sawstead.solid.Axis.X), 0));
              return made;
            });
    Eye eye = Eye.onto(floor.boxes(), Stance.INFEED, (double) WIDTH / HEIGHT, 0.8);
    double edge =
        eye.project(new Vec(0, part.body().box().low().y(), middle), WIDTH, HEIGHT)
            .orElseThrow()
            .x();
    assertEquals(edge, drawn(floor, eye, "stand/base").right(), 12, "cut at the blade's plane");
  }

  private static Bounds drawn(Floor floor, Eye eye, String id) {
    WritableImage image =
        Toolkit.call(
            () -> {
              floor.only(Set.of(id));
              floor.bare();
              Photo photo = new Photo(floor, WIDTH, HEIGHT, eye);
              StackPane room = new StackPane(photo.glass());
              Scene scene = new Scene(room, WIDTH, HEIGHT, Color.WHITE);
              room.setStyle("-fx-background-color: white");
              WritableImage shot = scene.snapshot(null);
              photo.glass().setRoot(new javafx.scene.Group());
              return shot;
            });
    PixelReader pixels = image.getPixelReader();
    double left = WIDTH;
    double top = HEIGHT;
    double right = 0;
    double bottom = 0;
    for (int y = 0; y < HEIGHT; y++) {
      for (int x = 0; x < WIDTH; x++) {
        if (pixels.getColor(x, y).getBlue() < 0.92) {
          left = Math.min(left, x);
          top = Math.min(top, y);
          right = Math.max(right, x + 1);
          bottom = Math.max(bottom, y + 1);
        }
      }
    }
    return new Bounds(left, top, right, bottom);
  }

  private static Bounds projected(Part part, Placement by, Eye eye) {
    Mesh mesh = part.body().mesh();
    double left = WIDTH;
    double top = HEIGHT;
    double right = 0;
    double bottom = 0;
    for (int i = 0; i < mesh.vertexCount(); i++) {
      Eye.Spot spot = eye.project(by.apply(mesh.vertex(i)), WIDTH, HEIGHT).orElseThrow();
      left = Math.min(left, spot.x());
      top = Math.min(top, spot.y());
      right = Math.max(right, spot.x());
      bottom = Math.max(bottom, spot.y());
    }
    return new Bounds(left, top, right, bottom);
  }
}
